namespace CoatPlan.Jobs.Reading;

/// <summary>A list.</summary>
internal sealed record ListForm(Form Item, int Least = 1) : Form;
