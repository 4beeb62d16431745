namespace CoatPlan.App.Desk.Asking;

/// <summary>A question of the guide: rows to pick from, or a value to type.</summary>
/// <param name="Asks">The question.</param>
/// <param name="Take">Takes the answer, a word for each row that was picked, or what was typed; null for one that is none.</param>
internal sealed record GuideQuestion(string Asks, Func<ImmutableArray<string>, GuideDraft?> Take)
{
    /// <summary>Why it is asked, or what to look at; empty for nothing.</summary>
    public string Explains { get; init; } = "";

    /// <summary>What can be picked; empty where the answer is typed.</summary>
    public ImmutableArray<PickerRow> Rows { get; init; } = [];

    /// <summary>The rows that are chosen at first.</summary>
    public ImmutableArray<string> Chosen { get; init; } = [];

    /// <summary>Whether several rows can be picked.</summary>
    public bool Several { get; init; }

    /// <summary>What is typed already.</summary>
    public string Typed { get; init; } = "";

    /// <summary>What an answer that is none should have been.</summary>
    public string Expected { get; init; } = "nothing fits what was typed";

    /// <summary>A question whose answer is typed.</summary>
    /// <param name="asks">The question.</param>
    /// <param name="typed">What is typed already.</param>
    /// <param name="take">Takes it.</param>
    public static GuideQuestion Line(string asks, string typed, Func<string, GuideDraft?> take) =>
        new(asks, answers => take(answers[0].Trim())) { Typed = typed };

    /// <summary>A question with rows, one of which is picked.</summary>
    /// <param name="asks">The question.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="take">Takes the word of one.</param>
    public static GuideQuestion One(string asks, ImmutableArray<PickerRow> rows, Func<string, GuideDraft?> take) =>
        new(asks, picked => picked is [var word] ? take(word) : null) { Rows = rows };

    /// <summary>A question with rows, any of which are picked.</summary>
    /// <param name="asks">The question.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="take">Takes their words.</param>
    public static GuideQuestion Some(string asks, ImmutableArray<PickerRow> rows, Func<ImmutableArray<string>, GuideDraft?> take) =>
        new(asks, picked => picked.IsEmpty ? null : take(picked)) { Rows = rows, Several = true };
}
