namespace CoatPlan.Quantities;

/// <summary>Why a text is not the quantity that is due.</summary>
public enum QuantityTroubleKind
{
    /// <summary>Nothing is there.</summary>
    Empty,

    /// <summary>It does not begin with a number.</summary>
    NotANumber,

    /// <summary>A number stands alone where a unit is due.</summary>
    NoUnit,

    /// <summary>The unit is not known.</summary>
    UnknownUnit,

    /// <summary>The unit measures something else.</summary>
    WrongDimension,

    /// <summary>A comma stands where it groups no thousands, as in a decimal comma.</summary>
    Comma,

    /// <summary>A fraction over zero.</summary>
    DividedByZero,

    /// <summary>A number too large to be counted with.</summary>
    TooLarge,

    /// <summary>A range where one value is due.</summary>
    Range,

    /// <summary>A range whose first end is more than its second.</summary>
    RangeReversed,

    /// <summary>Degrees that name neither °F nor °C.</summary>
    BareDegree,

    /// <summary>Something follows the quantity.</summary>
    Trailing,
}
