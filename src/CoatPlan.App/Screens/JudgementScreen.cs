using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>The card before a coat: go or no-go, limit by limit.</summary>
internal static class JudgementScreen
{
    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="judged">What was made of the readings.</param>
    public static void Draw(Canvas canvas, GoNoGo judged)
    {
        var text = new Reader(canvas, 1, 2);
        text.Say(judged.IsGo ? "GO: every reading is inside the label's limits" : "NO-GO: not every reading is inside the label's limits", judged.IsGo ? Ink.Strong : Ink.Warning);
        text.Skip();
        foreach (var says in judged.Says)
            text.Item("- ", says);
        text.Skip();
        text.Say("This compares readings with the limits planned with; the label in hand wins over it.", Ink.Quiet);
    }
}
