using CoatPlan.App.Desk;
using CoatPlan.App.Wording;

namespace CoatPlan.App.Screens;

/// <summary>Work that takes a while: how far it is, and how it is stopped.</summary>
internal static class RunningScreen
{
    private const int MostWidth = 60;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="work">The work.</param>
    public static void Draw(Canvas canvas, LongWork work)
    {
        var text = new Reader(canvas, 1, 2);
        text.Say($"{work.Name}...", Ink.Strong);
        text.Skip();
        var width = Math.Max(10, Math.Min(MostWidth, canvas.Width - 12));
        var filled = (int)(work.Share * width);
        text.Say($"[{new string('█', filled)}{new string('·', width - filled)}] {Written.Percent(work.Share)}");
    }
}
