namespace CoatPlan.App.Desk;

/// <summary>Something to pick from a list, each row with what it means; typing narrows the list.</summary>
internal sealed class Picker
{
    private readonly ImmutableArray<PickerRow> rows;

    private readonly HashSet<string> marked;

    /// <summary>A picker.</summary>
    /// <param name="asks">What is asked for.</param>
    /// <param name="rows">What can be picked.</param>
    /// <param name="chosen">The rows that are chosen now.</param>
    /// <param name="take">Takes the picked words; returns why not, or null where they were taken.</param>
    public Picker(string asks, ImmutableArray<PickerRow> rows, IEnumerable<string> chosen, Func<ImmutableArray<string>, string?> take)
    {
        Asks = asks;
        Take = take;
        this.rows = rows;
        marked = chosen.ToHashSet(StringComparer.Ordinal);
        At = Math.Max(0, rows.ToList().FindIndex(row => marked.Contains(row.Word)));
    }

    /// <summary>What is asked for.</summary>
    public string Asks { get; }

    /// <summary>Takes the picked words; returns why not, or null where they were taken.</summary>
    public Func<ImmutableArray<string>, string?> Take { get; }

    /// <summary>Whether several rows can be marked.</summary>
    public bool Several { get; init; }

    /// <summary>Why it is asked, or what to look at; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>What was typed to narrow the list.</summary>
    public string Filter { get; private set; } = "";

    /// <summary>Why what was picked was refused; null while it was not.</summary>
    public string? Complaint { get; set; }

    /// <summary>The rows that hold what was typed.</summary>
    public ImmutableArray<PickerRow> Rows => Filter.Length == 0
        ? rows
        : [.. rows.Where(row => row.Word.Contains(Filter, StringComparison.OrdinalIgnoreCase) || row.Means.Contains(Filter, StringComparison.OrdinalIgnoreCase))];

    /// <summary>The row that the keys act on, from 0; meaningless while <see cref="Rows"/> is empty.</summary>
    public int At { get; private set; }

    /// <summary>Whether a row is marked.</summary>
    /// <param name="row">The row.</param>
    public bool IsMarked(PickerRow row) => marked.Contains(row.Word);

    /// <summary>Goes up or down, stopping at the ends.</summary>
    /// <param name="rows">How far; down is more than 0.</param>
    public void Move(int rows) => At = RowChoice.Inside(At + rows, Rows.Length);

    /// <summary>Goes to a row.</summary>
    /// <param name="row">The row, from 0.</param>
    public void GoTo(int row) => At = RowChoice.Inside(row, Rows.Length);

    /// <summary>Marks or unmarks the row.</summary>
    public void Mark()
    {
        if (!Several || Rows.IsEmpty)
            return;

        var word = Rows[At].Word;
        if (!marked.Remove(word))
            marked.Add(word);
    }

    /// <summary>Narrows the list by one more character.</summary>
    /// <param name="text">The character.</param>
    public void Type(string text)
    {
        Filter += text;
        At = 0;
    }

    /// <summary>Widens the list by one character.</summary>
    public void Erase()
    {
        if (Filter.Length > 0)
            Filter = Filter[..^1];
        At = 0;
    }

    /// <summary>Widens the list to all of its rows.</summary>
    public void EraseAll() => (Filter, At) = ("", 0);

    /// <summary>How many rows are marked.</summary>
    public int Marked => marked.Count;

    /// <summary>All rows, whatever was typed.</summary>
    public ImmutableArray<PickerRow> All => rows;

    /// <summary>What would be taken now: the marked rows in the list's order, or the row the keys act on.</summary>
    public ImmutableArray<string> Picked()
    {
        if (Several && marked.Count > 0)
            return [.. rows.Where(IsMarked).Select(row => row.Word)];
        return Rows.IsEmpty ? [] : [Rows[At].Word];
    }
}
