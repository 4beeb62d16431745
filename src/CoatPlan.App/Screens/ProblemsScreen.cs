using CoatPlan.App.Desk;
using CoatPlan.App.Wording;

namespace CoatPlan.App.Screens;

/// <summary>The mistakes of a job file that cannot be read, with the lines they stand in.</summary>
internal static class ProblemsScreen
{
    private const int LongestPage = 600;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        var problems = desk.Reading.Problems;
        var page = new Canvas(canvas.Width, LongestPage);
        var text = new Reader(page, 0);
        text.Say($"{desk.File.Name} holds {Written.Count(problems.Length, "mistake", "mistakes")}, so it cannot be planned. "
            + $"Mend it in a text editor and press {Keys.NameOf(Word.Reload)} to read it again.", Ink.Strong);
        var lines = desk.Text.Split('\n');
        foreach (var problem in problems)
        {
            text.Skip();
            text.Item("! ", problem.ToString(), Ink.Warning);
            if (problem.Line <= lines.Length)
                text.Item($"{problem.Line,6} | ", lines[problem.Line - 1].TrimEnd());
        }

        LongPage.Show(canvas, page, text.Y, desk);
    }
}
