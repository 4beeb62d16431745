namespace CoatPlan.Prep;

/// <summary>Warnings that say the same; told apart at first by what they are about, since their texts are long.</summary>
internal sealed class SameWarning : EqualityComparer<Warning>
{
    /// <inheritdoc/>
    public override bool Equals(Warning? x, Warning? y) => x == y;

    /// <inheritdoc/>
    public override int GetHashCode(Warning obj) => HashCode.Combine(obj.Code, obj.Surface, obj.Product);
}
