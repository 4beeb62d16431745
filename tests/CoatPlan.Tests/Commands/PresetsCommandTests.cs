namespace CoatPlan.Tests.Commands;

public sealed class PresetsCommandTests
{
    [Fact]
    public void Every_row_says_where_it_comes_from()
    {
        var run = CommandRun.Of("presets", "scaly rust");

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain("Conditions");
        run.Output.ShouldMatch("published|common practice|estimate|from memory|computed");
    }

    [Fact]
    public void No_line_is_wider_than_the_page()
    {
        CommandRun.Of("presets").Output.Split('\n').ShouldAllBe(line => line.Length <= 80);
    }

    [Fact]
    public void A_word_that_nothing_holds_is_bad_input()
    {
        var run = CommandRun.Of("presets", "zzzz");

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("zzzz");
    }

    [Fact]
    public void What_goes_on_what_is_found_by_the_words_of_the_pair()
    {
        var run = CommandRun.Of("presets", "enamel-aerosol", "on", "zinc-plated");

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain("What goes on what");
        run.Output.ShouldContain("enamel-aerosol on zinc-plated steel");
        run.Output.ShouldContain("with a primer made for it first");
        run.Output.ShouldNotContain("lacquer-aerosol");
    }

    [Theory]
    [InlineData("toluene", "legal limit 200 ppm")]
    [InlineData("tack-cloth", "30 ft²")]
    [InlineData("lel-share-work", "10 %")]
    [InlineData("supplied-continuous", "full 1000")]
    [InlineData("underhood-black-aerosol", "12 % solids by volume")]
    public void Every_table_is_searched(string word, string told) =>
        string.Join(' ', CommandRun.Of("presets", word).Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ShouldContain(told);

    [Fact]
    public void A_row_that_was_made_to_agree_says_from_where() =>
        CommandRun.Of("presets", "enamel-aerosol").Output.ShouldContain("from 13 %");

    [Fact]
    public void A_folder_of_presets_overrides_the_built_in_rows()
    {
        using var folder = new TempFolder();
        folder.File("mine.yaml", "materials:\n  steel: {gauge: 9 mm}\n");

        var run = CommandRun.Of("presets", "steel", "--presets", folder.Path);

        run.ExitCode.ShouldBe(0);
        run.Output.ShouldContain("9 mm thick");
    }

    [Fact]
    public void Mistakes_in_a_folder_of_presets_are_named_by_file_and_line()
    {
        using var folder = new TempFolder();
        var path = folder.File("mine.yaml", "materials:\n  steel: {guage: 9 mm}\n");

        var run = CommandRun.Of("presets", "--presets", folder.Path);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines[0].ShouldStartWith($"{path}:2:");
    }

    [Fact]
    public void A_folder_that_is_not_there_is_bad_input()
    {
        using var folder = new TempFolder();

        CommandRun.Of("presets", "--presets", folder.File("no-such-folder")).ErrorLines.ShouldHaveSingleItem().ShouldContain("no such folder");
    }
}
