namespace CoatPlan.Tests.Walls;

/// <summary>Which libraries each assembly may stand on.</summary>
public class LibraryWallTests
{
    private static readonly ImmutableArray<string> s_core = ["NodaTime", "UnitsNet", "YamlDotNet", "CsvHelper"];
    private static readonly ImmutableArray<string> s_terminal = ["Terminal.Gui", "Spectre.Console", "System.CommandLine"];

    [Fact]
    public void The_core_stands_on_quantities_times_and_file_readers_alone()
    {
        var references = CompiledAssembly.Open("CoatPlan.Core.dll").References;

        references.Where(name => !name.StartsWith("System", StringComparison.Ordinal)).Except(s_core).ShouldBeEmpty();
    }

    [Fact]
    public void The_core_and_the_sheets_know_no_terminal()
    {
        foreach (string file in (string[])["CoatPlan.Core.dll", "CoatPlan.Sheets.dll"])
        {
            CompiledAssembly.Open(file).References.ShouldNotContain(name => s_terminal.Any(word => name.StartsWith(word, StringComparison.Ordinal)), file);
        }
    }

    [Fact]
    public void The_walls_read_references_at_all()
    {
        CompiledAssembly.Open("CoatPlan.Tests.dll").References.ShouldContain("Shouldly");
    }
}
