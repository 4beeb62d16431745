namespace CoatPlan.Sheets.Content;

/// <summary>A part of a sheet; the kinds in this folder are all there are.</summary>
public abstract record Block
{
    private protected Block()
    {
    }
}
