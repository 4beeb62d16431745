namespace CoatPlan.Sheets.Content;

/// <summary>How the paper of a sheet lies.</summary>
public enum SheetShape
{
    /// <summary>The short side on top.</summary>
    Portrait,

    /// <summary>The long side on top.</summary>
    Landscape,
}
