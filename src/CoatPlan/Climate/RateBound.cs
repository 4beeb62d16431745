namespace CoatPlan.Climate;

/// <summary>On which side of the truth a rate of drying must err.</summary>
internal enum RateBound
{
    /// <summary>For waits: heat never promises less than the label, and in the cold under the label's limits nothing dries.</summary>
    Floor,

    /// <summary>For windows that close: cold never keeps them open longer than the label.</summary>
    Ceiling,
}
