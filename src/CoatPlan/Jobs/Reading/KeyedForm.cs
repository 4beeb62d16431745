namespace CoatPlan.Jobs.Reading;

/// <summary>A map whose keys the person chooses.</summary>
internal sealed record KeyedForm(Form Value, string KeyPattern = "") : Form;
