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

    /// <summary>Verdicts of class on bare material.</summary>
    public required ImmutableDictionary<(string Class, string Material), Judgement> Materials { get; init; }

    /// <summary>Verdicts of class over class.</summary>
    public required ImmutableDictionary<(string Above, string Below), Judgement> Classes { get; init; }

    /// <summary>Verdicts of class over old finish.</summary>
    public required ImmutableDictionary<(string Class, string Finish), Judgement> Finishes { get; init; }

    /// <summary>Whether a class goes straight on a clean, abraded, bare material.</summary>
    /// <param name="classWord">A product class, or null for a product without a preset.</param>
    /// <param name="material">A material's word.</param>
    public Judgement OnMaterial(string? classWord, string material) =>
        classWord is null ? Unknown : Materials.GetValueOrDefault((classWord, material), Unknown);

    /// <summary>Whether a class goes over another.</summary>
    /// <param name="classWord">The class above, or null for a product without a preset.</param>
    /// <param name="classBelow">The class below, or null for a product without a preset.</param>
    public Judgement Over(string? classWord, string? classBelow) =>
        classWord is null || classBelow is null ? Unknown : Classes.GetValueOrDefault((classWord, classBelow), Unknown);

    /// <summary>Whether a class goes over an old finish.</summary>
    /// <param name="classWord">A product class, or null for a product without a preset.</param>
    /// <param name="finish">A finish's word; <c>bare</c> is judged by <see cref="OnMaterial"/>.</param>
    public Judgement OverFinish(string? classWord, string finish) =>
        classWord is null ? Unknown : Finishes.GetValueOrDefault((classWord, finish), Unknown);
}
