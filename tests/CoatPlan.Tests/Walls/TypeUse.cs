namespace CoatPlan.Tests.Walls;

/// <summary>A compiled type names another, or a member of it.</summary>
/// <param name="From">Full name of the outermost type that contains the naming code.</param>
/// <param name="FromNamespace">Its namespace.</param>
/// <param name="To">Full name of the type that is named.</param>
/// <param name="ToNamespace">Its namespace.</param>
/// <param name="ToAssembly">The assembly that the named type is in.</param>
/// <param name="Member">The member that is named, empty for the type alone.</param>
/// <param name="Parameters">How many parameters the member takes; -1 for none that can be counted.</param>
internal sealed record TypeUse(string From, string FromNamespace, string To, string ToNamespace, string ToAssembly, string Member, int Parameters)
{
    public override string ToString() => Member.Length == 0 ? $"{From} names {To}" : $"{From} names {To}.{Member}";
}
