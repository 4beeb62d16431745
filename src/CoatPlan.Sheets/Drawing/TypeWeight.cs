namespace CoatPlan.Sheets.Drawing;

/// <summary>How heavy a typeface is.</summary>
internal enum TypeWeight
{
    /// <summary>For reading.</summary>
    Regular,

    /// <summary>For what is looked for.</summary>
    Bold,
}
