namespace CoatPlan.Jobs.Reading;

/// <summary>A local date and time.</summary>
internal sealed record TimeForm : Form
{
    /// <summary>Month and day; the last day of February every year, since a pattern cannot count.</summary>
    public const string MonthAndDay = "((0[13578]|1[02])-(0[1-9]|[12][0-9]|3[01])|(0[469]|11)-(0[1-9]|[12][0-9]|30)|02-(0[1-9]|[12][0-9]))";

    /// <summary>What the schema asks of it.</summary>
    public const string Pattern = "^ *[0-9]{4}-" + MonthAndDay + "[ Tt]([01][0-9]|2[0-3]):[0-5][0-9] *$";

    /// <inheritdoc/>
    public override string Example => "2027-05-14 16:00";
}
