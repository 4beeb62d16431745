namespace CoatPlan.Tests.Validator;

/// <summary>A coat that lies on a surface, planned or already done.</summary>
internal sealed record CoatFact(int Layer, int Coat, int? Of, string? Product, double Start, double End, PlannedStep? Step)
{
    public string Where => Step?.Id ?? $"done layer {Layer} coat {Coat}";
}
