namespace CoatPlan.Tests.Walls;

/// <summary>The core has no clock, no chance, no files, no console and no current culture.</summary>
public class BannedCallTests
{
    private static readonly ImmutableArray<BannedSymbol> s_banned = BannedSymbol.Read(File.ReadAllText(Source.PathOf("src/CoatPlan/BannedSymbols.txt")));

    [Fact]
    public void The_compiled_core_makes_no_banned_call()
    {
        Found("CoatPlan.Core.dll", "CoatPlan").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("System.DateTime", "Now")]
    [InlineData("System.DateTime", "UtcNow")]
    [InlineData("System.TimeProvider", "")]
    [InlineData("NodaTime.SystemClock", "")]
    [InlineData("System.Random", "#ctor")]
    [InlineData("System.Random", "Shared")]
    [InlineData("System.IO.File", "")]
    [InlineData("System.IO.Directory", "")]
    [InlineData("System.Console", "")]
    [InlineData("System.Environment", "")]
    [InlineData("System.Globalization.CultureInfo", "CurrentCulture")]
    public void What_would_make_two_runs_differ_is_on_the_list(string type, string member)
    {
        s_banned.ShouldContain(symbol => symbol.Type == type && symbol.Member == member);
    }

    [Fact]
    public void Each_ban_says_what_to_use_instead()
    {
        s_banned.Where(symbol => symbol.Instead.Length == 0).ShouldBeEmpty();
    }

    [Fact]
    public void A_banned_call_is_seen()
    {
        string[] seen = [.. Found("CoatPlan.Tests.dll", "CoatPlan.Tests.Walls.Samples")];

        seen.ShouldContain("CoatPlan.Tests.Walls.Samples.Impure names System.DateTime.get_UtcNow");
        seen.ShouldContain("CoatPlan.Tests.Walls.Samples.Impure names System.Random..ctor");
        seen.ShouldContain("CoatPlan.Tests.Walls.Samples.Impure names System.IO.File.ReadAllText");
    }

    private static IEnumerable<string> Found(string assembly, string space) =>
        CompiledAssembly.Open(assembly).Uses.Where(use => use.FromNamespace.StartsWith(space, StringComparison.Ordinal) && s_banned.Any(symbol => symbol.Bans(use)))
            .Select(use => use.ToString()).Distinct();
}
