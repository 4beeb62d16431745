using System.Text.Json;

namespace CoatPlan.Tests.Validator;

/// <summary>A wait of a step for an earlier one.</summary>
internal sealed record PlannedWait(string Step, string Stage, double? Label, double? Least, double? Most);

/// <summary>A surface of a plan.</summary>
internal sealed record PlannedSurface(string Id, int Count, double AreaM2, double Relief, string Material, string System);

/// <summary>A step of a plan.</summary>
internal sealed record PlannedStep
{
    public required string Id { get; init; }
    public required string Kind { get; init; }
    public required ImmutableArray<string> Surfaces { get; init; }
    public required ImmutableArray<int> Pieces { get; init; }
    public required int Station { get; init; }
    public string? Batch { get; init; }
    public string? Product { get; init; }
    public int? Layer { get; init; }
    public int? Coat { get; init; }
    public int? Of { get; init; }
    public required bool Mist { get; init; }
    public required double Start { get; init; }
    public required double End { get; init; }
    public required double Hands { get; init; }
    public required int People { get; init; }
    public required bool MakesDust { get; init; }
    public required bool Spray { get; init; }
    public required ImmutableArray<PlannedWait> After { get; init; }
    public required double AirC { get; init; }
    public required double SurfaceC { get; init; }
    public required double DewPointC { get; init; }
    public required double Humidity { get; init; }
    public required string Why { get; init; }
    public double? LastSafeStart { get; init; }

    public bool IsCoat => Kind == "coat";
}

/// <summary>A row of a plan's supplies.</summary>
internal sealed record PlannedSupply(string Product, double AreaCoatsM2, int Cans, int Low, int High, int Buy, double? Price, string Basis);

/// <summary>A stretch in which people have nothing to do.</summary>
internal sealed record PlannedIdle(int Station, double From, double To, int People);

/// <summary>A moment at which the whole job is said to be able to stop.</summary>
internal sealed record PlannedRest(string After, double At);

/// <summary>A plan as its JSON says it.</summary>
internal sealed record PlanView
{
    public required double Start { get; init; }
    public double? Finish { get; init; }
    public double? InService { get; init; }
    public double? FinishBy { get; init; }
    public double? LowerBound { get; init; }
    public required ImmutableArray<string> Reasons { get; init; }
    public required ImmutableArray<PlannedSurface> Surfaces { get; init; }
    public required ImmutableArray<PlannedStep> Steps { get; init; }
    public required ImmutableArray<PlannedSupply> Supplies { get; init; }
    /// <summary>Null where the plan says nothing of idle hours.</summary>
    public ImmutableArray<PlannedIdle>? Idle { get; init; }
    public ImmutableArray<PlannedRest> Rests { get; init; } = [];
    public required JsonElement Root { get; init; }

    public static PlanView Read(JsonElement plan)
    {
        ImmutableArray<PlannedSurface> surfaces =
        [
            .. plan.GetProperty("surfaces").EnumerateArray().Select(item => new PlannedSurface(
                Text(item, "id")!, item.GetProperty("count").GetInt32(), Number(item, "areaM2")!.Value, Number(item, "relief")!.Value, Text(item, "material")!, Text(item, "system")!)),
        ];
        return new PlanView
        {
            Start = Time(plan, "start")!.Value,
            Finish = Time(plan, "finish"),
            InService = Time(plan, "inService"),
            FinishBy = Time(plan, "finishBy"),
            LowerBound = Time(plan, "lowerBound"),
            Reasons = [.. plan.GetProperty("reasons").EnumerateArray().Select(item => item.GetString()!)],
            Surfaces = surfaces,
            Steps = [.. plan.GetProperty("steps").EnumerateArray().Select(item => ReadStep(item, surfaces))],
            Supplies =
            [
                .. plan.GetProperty("supplies").EnumerateArray().Select(item => new PlannedSupply(
                    Text(item, "product")!, Number(item, "areaCoatsM2")!.Value, Whole(item, "cans")!.Value, Whole(item, "cansLow")!.Value,
                    Whole(item, "cansHigh")!.Value, Whole(item, "buy")!.Value, Number(item, "price"), Text(item, "basis")!)),
            ],
            Idle = plan.TryGetProperty("idle", out var idle)
                ? [.. idle.EnumerateArray().Select(item => new PlannedIdle(Whole(item, "station") ?? 0, Time(item, "from")!.Value, Time(item, "to")!.Value, Whole(item, "people")!.Value))]
                : null,
            Rests = plan.TryGetProperty("restPoints", out var rests)
                ? [.. rests.EnumerateArray().Select(item => new PlannedRest(Text(item, "after")!, Time(item, "at")!.Value))]
                : [],
            Root = plan,
        };
    }

    private static PlannedStep ReadStep(JsonElement item, ImmutableArray<PlannedSurface> surfaces)
    {
        ImmutableArray<string> ids = [.. item.GetProperty("surfaces").EnumerateArray().Select(id => id.GetString()!)];
        return new PlannedStep
        {
            Id = Text(item, "id")!,
            Kind = Text(item, "kind")!,
            Surfaces = ids,
            Pieces = item.TryGetProperty("pieces", out var pieces) && pieces.ValueKind == JsonValueKind.Array
                ? [.. pieces.EnumerateArray().Select(count => count.GetInt32())]
                : [.. ids.Select(id => surfaces.FirstOrDefault(surface => surface.Id == id)?.Count ?? 0)],
            Station = item.TryGetProperty("station", out var station) && station.ValueKind == JsonValueKind.Number ? station.GetInt32() : 0,
            Batch = Text(item, "batch"),
            Product = Text(item, "product"),
            Layer = Whole(item, "layer"),
            Coat = Whole(item, "coat"),
            Of = Whole(item, "of"),
            Mist = item.GetProperty("mist").GetBoolean(),
            Start = Time(item, "start")!.Value,
            End = Time(item, "end")!.Value,
            Hands = Number(item, "handsMin")!.Value,
            People = Whole(item, "people")!.Value,
            MakesDust = item.GetProperty("makesDust").GetBoolean(),
            Spray = item.GetProperty("spray").GetBoolean(),
            After =
            [
                .. item.GetProperty("after").EnumerateArray().Select(wait => new PlannedWait(
                    Text(wait, "step")!, Text(wait, "stage")!, Number(wait, "labelMin"), Number(wait, "leastMin"), Number(wait, "mostMin"))),
            ],
            AirC = Number(item, "airC")!.Value,
            SurfaceC = Number(item, "surfaceC")!.Value,
            DewPointC = Number(item, "dewPointC")!.Value,
            Humidity = Number(item, "humidity")!.Value,
            Why = Text(item, "why")!,
            LastSafeStart = Time(item, "lastSafeStart"),
        };
    }

    private static string? Text(JsonElement item, string key) => item.GetProperty(key).GetString();

    private static double? Number(JsonElement item, string key) =>
        item.GetProperty(key) is { ValueKind: JsonValueKind.Number } value ? value.GetDouble() : null;

    private static int? Whole(JsonElement item, string key) =>
        item.GetProperty(key) is { ValueKind: JsonValueKind.Number } value ? value.GetInt32() : null;

    private static double? Time(JsonElement item, string key) => Text(item, key) is { } text ? WallMinutes.Read(text) : null;
}
