using CoatPlan.Problems;

namespace CoatPlan.Climate;

/// <summary>One line of a table.</summary>
/// <param name="Fields">Its fields, trimmed.</param>
/// <param name="Columns">Where each begins, from 1.</param>
/// <param name="Line">The line in the text, from 1.</param>
internal sealed record ForecastLine(ImmutableArray<string> Fields, ImmutableArray<int> Columns, int Line)
{
    /// <summary>The place of a field.</summary>
    public Mark At(int field) => new(Line, field < Columns.Length ? Columns[field] : Columns[^1]);
}
