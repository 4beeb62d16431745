using CoatPlan.Problems;

namespace CoatPlan.App.Desk;

/// <summary>What is wrong with a text, in one sentence for the row under what is typed.</summary>
internal static class Complaint
{
    /// <summary>The first of some problems, with what was expected and how to mend it.</summary>
    /// <param name="problems">The problems, at least one.</param>
    public static string Of(ImmutableArray<Problem> problems)
    {
        var first = problems[0];
        var expected = first.Expected.Length > 0 ? $", expected {first.Expected}" : "";
        var mend = string.IsNullOrEmpty(first.Mend) ? "" : $"; did you mean {first.Mend}?";
        return $"{first.Message}{expected}{mend}";
    }
}
