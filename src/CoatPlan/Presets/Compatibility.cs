namespace CoatPlan.Presets;

/// <summary>Which class goes on which material, over which class and over which old finish.</summary>
/// <remarks>A label that says otherwise wins.</remarks>
public sealed record Compatibility
{
    /// <summary>What is said of a pairing that no table has.</summary>
    public static Judgement Unknown { get; } =
        new(Verdict.Unknown, "", "nothing is known of this pairing: the label decides", new Provenance("no preset", Status.Estimate));

    /// <summary>Reasons by key.</summary>
    public required ImmutableDictionary<string, CompatibilityReason> Reasons { get; init; }

    /// <summary>Verdicts of class on bare material, by <see cref="Pair"/>.</summary>
    public required ImmutableDictionary<string, Judgement> Materials { get; init; }

    /// <summary>Verdicts of class over class, by <see cref="Pair"/> of above and below.</summary>
    public required ImmutableDictionary<string, Judgement> Classes { get; init; }

    /// <summary>Verdicts of class over old finish, by <see cref="Pair"/>.</summary>
    public required ImmutableDictionary<string, Judgement> Finishes { get; init; }

    /// <summary>The key of a pairing in the tables.</summary>
    /// <param name="above">The class that goes on.</param>
    /// <param name="below">What is there.</param>
    public static string Pair(string above, string below) => $"{above} / {below}";

    /// <summary>Whether a class goes straight on a clean, abraded, bare material.</summary>
    /// <param name="classWord">A product class, or null for a product without a preset.</param>
    /// <param name="material">A material's word.</param>
    public Judgement OnMaterial(string? classWord, string material) =>
        classWord is null ? Unknown : Materials.GetValueOrDefault(Pair(classWord, material), Unknown);

    /// <summary>Whether a class goes over another.</summary>
    /// <param name="classWord">The class above, or null for a product without a preset.</param>
    /// <param name="classBelow">The class below, or null for a product without a preset.</param>
    public Judgement Over(string? classWord, string? classBelow) =>
        classWord is null || classBelow is null ? Unknown : Classes.GetValueOrDefault(Pair(classWord, classBelow), Unknown);

    /// <summary>Whether a class goes over an old finish.</summary>
    /// <param name="classWord">A product class, or null for a product without a preset.</param>
    /// <param name="finish">A finish's word; <c>bare</c> is judged by <see cref="OnMaterial"/>.</param>
    public Judgement OverFinish(string? classWord, string finish) =>
        classWord is null ? Unknown : Finishes.GetValueOrDefault(Pair(classWord, finish), Unknown);
}
