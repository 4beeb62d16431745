using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Tests.Presets;

public sealed class BuiltInPresetTests
{
    [Fact]
    public void The_built_in_files_hold_no_mistake()
    {
        var reading = CatalogueReader.Read(BuiltInPresets.Texts, []);

        reading.Problems.ShouldBeEmpty();
        reading.Catalogue.ShouldNotBeNull();
    }

    [Fact]
    public void Every_built_in_file_is_plain_enough_for_the_quick_reader()
    {
        foreach (var preset in BuiltInPresets.Texts.Where(text => !RuleFiles.Holds(text))) PlainYaml.Read(preset.Text).ShouldNotBeNull(preset.Name);
    }

    [Fact]
    public void The_presets_have_every_word_of_the_contract()
    {
        var words = BuiltInPresets.Read().Vocabulary;
        var contract = Vocabulary.Contract;

        words.Materials.ShouldBe(contract.Materials);
        words.Finishes.ShouldBe(contract.Finishes);
        words.Conditions.ShouldBe(contract.Conditions);
        words.MaskKinds.ShouldBe(contract.MaskKinds);
        words.Hazards.ShouldBe(contract.Hazards);
        words.ProductPresets.ShouldBe(contract.ProductPresets);
        words.Operations.ShouldBe(contract.Operations, ignoreOrder: true);
        words.Near.ShouldBe(contract.Near);
        words.Forms.ShouldBe(contract.Forms);
    }
}
