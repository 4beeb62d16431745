using System.Collections.Concurrent;
using CoatPlan.Jobs;
using CoatPlan.Prep;

namespace CoatPlan.Tests.Prep;

/// <summary>What must hold for any material, finish, condition and class of the contract.</summary>
public class EveryPairOfWords
{
    private static readonly Vocabulary Words = Vocabulary.Contract;
    private static readonly ConcurrentDictionary<string, ImmutableArray<Sequence>> ByMaterial = new();

    public static TheoryData<string> Materials => [.. Words.Materials];

    [Theory]
    [MemberData(nameof(Materials))]
    public void Any_surface_has_a_sequence_that_cleans_first_and_wipes_last(string material)
    {
        foreach (var sequence in Sequences(material))
        {
            var prep = sequence.Operations.Where(operation => operation.Stage is 5 or 6).Select(operation => operation.Word).ToArray();
            prep[0].ShouldBe("solvent-clean");
            prep[^2..].ShouldBe(["final-wipe", "tack"]);
        }
    }

    [Theory]
    [MemberData(nameof(Materials))]
    public void No_sentence_keeps_a_name_in_braces_or_an_empty_one(string material)
    {
        foreach (var text in Sequences(material).SelectMany(sequence => sequence.Operations).SelectMany(operation => operation.Notes.Append(operation.Why)))
        {
            text.ShouldNotContain("{");
            text.ShouldNotContain("  ");
            text.ShouldNotContain("on :");
        }
    }

    [Theory]
    [MemberData(nameof(Materials))]
    public void Steel_wire_meets_bare_iron_only(string material)
    {
        if (material is "steel" or "cast iron")
            return;

        Sequences(material).SelectMany(sequence => sequence.Operations)
            .ShouldAllBe(operation => !operation.Title.StartsWith("Wire-brush") && !operation.Title.Contains("wire wheel"));
    }

    private static ImmutableArray<Sequence> Sequences(string material) => ByMaterial.GetOrAdd(material, Build);

    private static ImmutableArray<Sequence> Build(string material) =>
    [
        .. from finish in Words.Finishes
           from condition in Words.Conditions
           from system in new[] { PrepJob.EtchSpotsAndEnamel, "moisture-cure-urethane" }
           select PrepJob.Sequence(PrepJob.Surface(material: material, finish: finish, condition: [condition], system: system)),
    ];
}
