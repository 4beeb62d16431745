namespace CoatPlan.Tests.Walls;

/// <summary>Who may know whom among the rooms of the library.</summary>
public class RoomWallTests
{
    private static readonly CompiledAssembly s_core = CompiledAssembly.Open("CoatPlan.Core.dll");
    private static readonly Dictionary<string, ImmutableArray<string>> s_allowed = Rooms.Arrows.ToDictionary(arrow => arrow.Room, arrow => arrow.MayName, StringComparer.Ordinal);

    [Fact]
    public void No_room_names_a_room_that_it_may_not()
    {
        Rooms.Forbidden(s_core.Uses, "CoatPlan", s_allowed).Select(use => use.ToString()).Distinct().ShouldBeEmpty();
    }

    [Fact]
    public void Every_allowed_arrow_is_used()
    {
        var used = s_core.Uses.Select(use => (From: Rooms.Of(use.FromNamespace, "CoatPlan"), To: Rooms.Of(use.ToNamespace, "CoatPlan"))).ToHashSet();

        var idle = Rooms.Arrows.SelectMany(arrow => arrow.MayName.Where(name => !used.Contains((arrow.Room, name))).Select(name => $"{arrow.Room} to {name}"));

        idle.ShouldBeEmpty("an arrow that nothing uses is taken out of the table");
    }

    [Fact]
    public void Every_allowed_arrow_points_up()
    {
        string[] order = [.. Rooms.Arrows.Select(arrow => arrow.Room)];

        var down = Rooms.Arrows.SelectMany(arrow => arrow.MayName.Where(name => Array.IndexOf(order, name) >= Array.IndexOf(order, arrow.Room)).Select(name => $"{arrow.Room} to {name}"));

        down.ShouldBeEmpty();
    }

    [Fact]
    public void Every_namespace_of_the_library_is_a_room()
    {
        var rooms = s_core.Uses.Select(use => Rooms.Of(use.FromNamespace, "CoatPlan")).OfType<string>().Distinct();

        rooms.Except(s_allowed.Keys).ShouldBeEmpty();
    }

    [Fact]
    public void Scheduling_sees_the_base_library_and_NodaTime_alone()
    {
        var seen = s_core.Uses.Where(use => Rooms.Of(use.FromNamespace, "CoatPlan") == "Scheduling" && Rooms.Of(use.ToNamespace, "CoatPlan") != "Scheduling").ToArray();

        seen.ShouldNotBeEmpty();
        seen.Where(use => !use.ToAssembly.StartsWith("System", StringComparison.Ordinal) && use.ToAssembly != "NodaTime").ShouldBeEmpty();
    }

    [Fact]
    public void A_broken_wall_is_seen()
    {
        var tests = CompiledAssembly.Open("CoatPlan.Tests.dll");
        var allowed = new Dictionary<string, ImmutableArray<string>> { ["Upper"] = [], ["Lower"] = [] };

        var forbidden = Rooms.Forbidden(tests.Uses, "CoatPlan.Tests.Walls.Samples", allowed);

        forbidden.Select(use => (use.From, use.To)).Distinct().ShouldBe([("CoatPlan.Tests.Walls.Samples.Lower.Room", "CoatPlan.Tests.Walls.Samples.Upper.Answer")]);
    }
}
