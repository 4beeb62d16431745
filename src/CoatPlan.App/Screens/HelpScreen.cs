using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>Every key and what it does.</summary>
internal static class HelpScreen
{
    private const int LongestPage = 200;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="desk">The desk.</param>
    public static void Draw(Canvas canvas, JobDesk desk)
    {
        var page = new Canvas(canvas.Width, LongestPage);
        var text = new Reader(page, 0);
        foreach (var group in Keys.All.GroupBy(row => row.Group))
        {
            text.Say(group.Key, Ink.Strong);
            foreach (var row in group)
                text.Item($"  {string.Join(" or ", row.Pressed.Select(key => key.Name)),-16}", $"{row.Means}.");
            text.Skip();
        }

        text.Say("A value is typed as people write it: 8 ft2, 3 1/4 in, 0.7 m2. A mistake is explained above the totals; what was typed stays.");
        text.Say("The product's label and safety data sheet win over every plan; local codes and licensed practice win over both.");
        LongPage.Show(canvas, page, text.Y, desk);
    }
}
