namespace CoatPlan.Sheets.Drawing;

/// <summary>One thing on a picture; the kinds in this folder are all there are. Measures are in points from its upper left corner, inks from 0 (black) to 1 (white).</summary>
internal abstract record Mark
{
    private protected Mark()
    {
    }
}
