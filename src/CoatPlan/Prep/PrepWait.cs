using CoatPlan.Presets;

namespace CoatPlan.Prep;

/// <summary>A row of prep.yaml: a wait that follows an operation.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="Kind">What is waited for.</param>
/// <param name="Figure">Name of the figure that gives its time; null: <paramref name="Minutes"/> does.</param>
/// <param name="Minutes">Its time where no figure does.</param>
/// <param name="Why">What is waited for, as a clause.</param>
/// <param name="Source">Where <paramref name="Minutes"/> come from.</param>
/// <param name="Status">How well that is vouched for.</param>
internal sealed record PrepWait(string Id, WaitKind Kind, string? Figure, double Minutes, string Why, string Source, string Status)
{
    /// <summary>The wait with its time.</summary>
    public OperationWait Taken(Catalogue catalogue)
    {
        if (Figure is null)
            return new OperationWait(Kind, Duration.FromMinutes((long)Minutes), Why, Source.Length == 0 ? Status : $"{Source}; {Status}");

        var row = catalogue.Figures.Row(Figure);
        return new OperationWait(Kind, catalogue.Figures.Time(Figure), Why, row.Provenance.Source);
    }
}
