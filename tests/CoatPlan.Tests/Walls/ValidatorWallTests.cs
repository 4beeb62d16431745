namespace CoatPlan.Tests.Walls;

/// <summary>The judge of plans shares nothing with their maker.</summary>
public class ValidatorWallTests
{
    private const string Judge = "CoatPlan.Tests.Validator";

    [Fact]
    public void The_validator_names_no_type_of_the_program()
    {
        var uses = CompiledAssembly.Open("CoatPlan.Tests.dll").Uses.Where(use => use.FromNamespace == Judge).ToArray();

        uses.ShouldContain(use => use.To == $"{Judge}.JobView", "the wall must see the validator at all");
        uses.Where(use => use.ToNamespace != Judge && use.ToNamespace.StartsWith("CoatPlan", StringComparison.Ordinal)
            || use.ToAssembly.StartsWith("CoatPlan.Core", StringComparison.Ordinal) || use.ToAssembly is "UnitsNet").Select(use => use.ToString()).ShouldBeEmpty();
    }
}
