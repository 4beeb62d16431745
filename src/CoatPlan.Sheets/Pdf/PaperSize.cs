namespace CoatPlan.Sheets.Pdf;

/// <summary>The paper a sheet is printed on.</summary>
public enum PaperSize
{
    /// <summary>8.5 × 11 in. Source: ANSI/ASME Y14.1.</summary>
    Letter,

    /// <summary>210 × 297 mm. Source: ISO 216.</summary>
    A4,
}
