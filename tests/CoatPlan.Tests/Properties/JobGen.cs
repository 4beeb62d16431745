using System.Globalization;
using CsCheck;

namespace CoatPlan.Tests.Properties;

/// <summary>Draws realistic jobs: every material, finish, condition, preset, shape, form of weather and of calendar, people, stations, racks, spots, heaters, labels of one's own.</summary>
internal static class JobGen
{
    public static readonly ImmutableArray<string> Materials =
        ["steel", "cast iron", "aluminium", "cast aluminum", "stainless steel", "zinc-plated steel", "cadmium plated steel", "copper alloy", "ABS", "polyolefin", "fiberglass", "rubber"];

    public static readonly ImmutableArray<string> Finishes = ["bare", "factory paint", "repaint", "powder coat", "unknown"];

    public static readonly ImmutableArray<string> Conditions =
        ["sound", "oily", "road grime", "scratches", "chips", "peeling", "chalky", "light rust", "scaly rust", "pitted", "white corrosion", "burnt"];

    public static readonly ImmutableArray<string> Presets =
    [
        "enamel-aerosol", "lacquer-aerosol", "engine-enamel-aerosol", "high-heat-aerosol", "etch-primer-aerosol", "filler-primer-aerosol", "rust-primer-aerosol",
        "rust-converter", "moisture-cure-urethane", "epoxy-primer-2k-aerosol", "urethane-2k-aerosol", "zinc-rich-aerosol", "polyolefin-promoter-aerosol",
        "trim-coating-aerosol", "clear-aerosol", "underhood-black-aerosol", "aluminium-colour-aerosol", "caliper-enamel-aerosol",
    ];

    public static readonly ImmutableArray<string> Masks =
    [
        "{what: wiring loom, kind: wiring, edge: 6 ft}", "{what: heater opening, kind: opening, area: 1 ft2}", "{what: grommet, kind: rubber, edge: 12 in}",
        "{what: ground stud, kind: ground}", "{what: data plate, kind: plate, edge: 14 in, area: 10 in2}", "{what: gasket face, kind: sealing face, edge: 3 ft}",
        "{what: sensor, kind: sensor}", "{what: hinge, kind: moving part, edge: 1 1/2 ft}",
    ];

    public static readonly ImmutableArray<string> Shapes =
    [
        "{panel: {length: 24 in, width: 18 in, sides: 2}}", "{disc: {diameter: 9 in}}", "{ring: {outer: 10 in, inner: 4 in, sides: 2}}",
        "{box: {length: 12 in, width: 8 in, height: 7 in, faces: 5, less: [{disc: {diameter: 2 in}}]}}", "{tube: {diameter: 2 in, length: 3 ft, ends: 1, inside: true}}",
        "{cone: {base: 8 in, top: 3 in, height: 6 in}}", "{dome: {diameter: 10 in, height: 3 in}}", "{bend: {diameter: 2 in, radius: 4 in, angle: 90°}}",
        "{channel: {web: 4 in, flange: 2 in, length: 4 ft, count: 2}}", "{angle: {leg-a: 2 in, leg-b: 3 in, length: 2 ft}}",
    ];

    private static readonly Gen<string> s_ownLabel =
        from touch in Gen.Int[10, 60]
        from tapeTimes in Gen.Int[2, 5]
        from handleTimes in Gen.Int[1, 4]
        from throughHours in Gen.Int[3, 48]
        from open in Gen.Int[3, 30]
        from length in Gen.Int[20, 90]
        from windows in OneOf("either", "either", "within", "after", "closed", "wide")
        from topcoat in OneOf("", "", $", topcoat: after 2 h", ", topcoat: [30 min-4 h, after 24 h]")
        from drying in OneOf("solvent", "solvent", "oxidation", "waterborne", "moisture", "two-part")
        from humidity in OneOf("85 %", "80 %", "30-80 %")
        from low in OneOf(45, 50, 50, 55)
        from dew in OneOf("", ", above-dew: 3 °C", ", above-dew: 5 °F")
        from method in OneOf("", "", ", method: brush", ", method: spray gun")
        from missed in OneOf("", "", ", missed: scuff", ", missed: wait", ", missed: strip")
        from pot in OneOf("", "", "", ", use-within: 4 h")
        from covers in Gen.Int[7, 22]
        from solids in OneOf("", "", ", solids: 12 %, density: 0.79 kg/L, dry-film: 1 mil")
        from price in OneOf("", ", price: 9.50", ", price: 11.25, pack: 6")
        from solvents in OneOf("", ", solvents: {acetone: 35 %, xylene: 5-10 %}, hazards: [flammable, irritant]")
        from table in OneOf("", "", "", $", times-at: [{{air: 45 °F, touch: {3 * touch} min}}, {{air: 70 °F, touch: {touch} min, through: {throughHours + 24} h}}, {{air: 85 °F, touch: {touch / 3 + 1} min, recoat: 5 min-20 min}}]", $", times-at: [{{air: 50 °F, touch: {2 * touch} min, handle: {2 * touch * tapeTimes * handleTimes} min}}, {{air: 90 °F, touch: {touch / 2} min, handle: {touch * tapeTimes * handleTimes / 2} min}}]")
        let tape = touch * tapeTimes
        let handle = tape * handleTimes
        let through = Math.Max(throughHours * 60, handle + 30)
        let recoat = windows switch
        {
            "either" => $"[{open} min-{open + length} min, after {through} min]",
            "within" => $"[within {touch + length} min, after {through} min]",
            "after" => $"after {open} min",
            "closed" => $"{open} min-{open + length} min",
            _ => $"{open} min-24 h",
        }
        select $"{{package: {{net: 12 oz{price}}}, covers: {covers} ft2{solids}, drying: {drying}{method}, times: {{dust: {Math.Max(5, touch / 2)} min, touch: {touch} min, tape: {tape} min, handle: {handle} min, through: {through} min, service: {2 * through} min}}"
            + $"{table}, recoat: {recoat}{topcoat}{missed}{pot}, limits: {{air: {low}-95 °F, surface: {low}-100 °F, humidity: {humidity}{dew}}}{solvents}}}";

    private static readonly Gen<string> s_presetLabel =
        from preset in OneOf(Presets.ToArray())
        from own in OneOf("", "", "", ", covers: 13 ft2", ", recoat: [10 min-1 h, after 24 h]", ", package: {net: 12 oz, price: 9.50}", ", limits: {air: 50-90 °F, humidity: 85 %}", ", coats: 2-3, hiding: good, lightness: black")
        select $"{{preset: {preset}{own}}}";

    private static readonly Gen<string> s_label = Gen.Frequency((3, (IGen<string>)s_ownLabel), (2, s_presetLabel));

    private static readonly Gen<DrawnWeather> s_weather =
        from kind in OneOf("steady", "steady", "daily", "daily", "daily-humidity", "hours", "hours", "warm-hour")
        from low in Gen.Int[42, 66]
        from range in Gen.Int[6, 24]
        from high in Gen.Int[58, 84]
        from under in Gen.Int[4, 16]
        from humidity in Gen.Int[35, 62]
        let top = kind == "steady" ? high : low + range
        select new DrawnWeather(kind, low, top, low - under, humidity);

    private static readonly Gen<ImmutableArray<string>> s_place =
        from space in OneOf("room: {length: 22 ft, width: 20 ft, height: 9 ft}", "room: {length: 6 m, width: 4 m, height: 2.5 m}", "volume: 4000 ft3", "volume: 90 m3", "outdoors: true")
        from exhaust in OneOf("", "exhaust: 800 cfm", "exhaust: 20 m3/min")
        from mixing in OneOf("", "", "mixing: 3")
        from heat in OneOf("", "", "", "hold: 62 °F\nheater: sealed", "hold: 64 °F\nheater: open\ncools-in: 40 min", "hold: 60 °F\nheater: open", "hold: 66 °F\nheater: open\ncools-in: 3 h")
        from spots in OneOf("", "", "spray-spots: 2", "spray-spots: 3")
        from rack in OneOf("", "", "", "rack: 1", "rack: 3", "rack: 6", "rack: 12")
        from ignition in OneOf("", "ignition: [gas water heater]")
        let heating = space.StartsWith("outdoors", StringComparison.Ordinal) ? "" : heat
        select Lines(space, exhaust, mixing, heating, spots, rack, ignition);

    private static readonly Gen<ImmutableArray<string>> s_crew =
        from people in OneOf(1, 1, 2, 3)
        from stations in OneOf("", "", "", "", "stations: 2", "stations: 3")
        from hours in OneOf(
            "hours: {Fri: 16:00-21:00, Sat-Sun: [08:00-12:00, 13:00-18:00], Mon-Thu: 17:00-21:00}",
            "hours: {Mon-Fri: 08:00-17:00, Sat: 09:00-12:00}",
            "hours: {Mon-Sun: [09:00-12:30, 13:00-19:00], 2027-05-16: none, 2027-05-17: 10:00-20:00}",
            "hours: {Fri-Mon: [08:00-13:00, 14:00-20:00], Wed: 22:00-02:00}",
            "hours: {Mon-Fri: [09:00-09:50, 10:00-10:50, 11:00-11:50, 13:00-13:50, 14:00-14:50]}",
            "hours: {Mon-Sun: 07:00-23:00}",
            "hours: {Mon-Sun: 21:30-03:15}",
            "hours: {Fri-Sun: [06:00-06:20, 07:00-07:15, 12:00-12:30, 18:00-22:00], Mon-Thu: 12:00-12:45}",
            "hours: {Mon-Sun: [13:00-15:00]}",
            "hours: {2027-05-14: 16:00-20:00, 2027-05-15: [08:00-12:00, 13:00-23:00], 2027-05-16: 00:00-18:00}",
            "hours: {Sat: 10:00-18:00}")
        from setUp in OneOf("", "", "set-up: 10 min\nput-away: 10 min", "set-up: 5 min")
        select Lines(string.Create(CultureInfo.InvariantCulture, $"people: {people}"), stations, hours, setUp);

    private static readonly Gen<ImmutableArray<string>> s_head =
        from start in OneOf("2027-05-14 16:00", "2027-05-14 08:00", "2027-05-15 09:30", "2027-05-17 08:15", "2027-05-14 23:50", "2027-05-14 00:00", "2027-12-30 17:00", "2028-02-28 12:00")
        from days in OneOf(0, 0, 0, 4, 16)
        let finishBy = days == 0 ? "" : FormattableString.Invariant($"finish-by: {DateTime.ParseExact(start[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture).AddDays(days):yyyy-MM-dd} 20:00")
        from reserve in OneOf("", "", "reserve: 15 %", "reserve: 0 %")
        from tape in OneOf("", "", "tape-limit: 12 h", "tape-limit: 2 d")
        from units in OneOf("", "units: metric")
        from built in OneOf("", "built: 1968", "built: 2004")
        select Lines("job: Drawn at random", $"start: {start}", finishBy, reserve, tape, units, built);

    private static readonly Gen<ImmutableArray<string>> s_tail =
        from prices in OneOf("", "", "prices: {labour: 85 /h, markup: 25 %, tax: 8.25 %}")
        from checks in OneOf("", "", "", "checks: {cylinder-pressures: [132 psi, 131 psi, 134 psi, 130 psi], pressure-test: {cap: 13 psi, start: 13 psi, end: 13 psi, after: 5 min}}")
        select Lines(prices, checks);

    /// <summary>Jobs of one to five surfaces.</summary>
    public static readonly Gen<DrawnJob> Any =
        from head in s_head
        from weather in s_weather
        from place in s_place
        from crew in s_crew
        from labels in s_label.Array[2, 4]
        from systems in System(labels.Length).Array[1, 3]
        from surfaces in Surface(systems.Length).Array[1, 4]
        from tail in s_tail
        select new DrawnJob(
            head, weather, place, crew, [.. labels.Select((label, i) => $"p{i}: {label}")], [.. systems.Select((system, i) => $"s{i}: {system}")],
            [.. surfaces.Select((surface, i) => surface with { Name = $"Piece {i + 1}" })], tail);

    private static readonly string[] s_layerWords = ["", "", ", coats: 1", ", coats: 2", ", coats: 3", ", coats: 2, mist: true"];

    private static Gen<string> System(int products) =>
        from layers in Gen.Int[1, 3]
        from start in Gen.Int[0, products - 1]
        from words in OneOf(s_layerWords).Array[3]
        from spots in OneOf(false, false, true)
        let count = Math.Min(layers, products)
        select "[" + string.Join(", ", Enumerable.Range(0, count).Select(i =>
            $"{{product: p{(start + i) % products}{words[i]}{(i == 0 && count > 1 && spots ? ", only: bare" : "")}}}")) + "]";

    private static Gen<DrawnSurface> Surface(int systems) =>
        from area in Gen.Int[1, 16]
        from shape in Gen.Frequency((3, Gen.Const((string?)null)), (1, OneOf(Shapes.Select(text => (string?)text).ToArray())))
        from system in Gen.Int[0, systems - 1]
        from material in OneOf(Materials.ToArray())
        from finish in OneOf(Finishes.ToArray())
        from conditions in OneOf(Conditions.ToArray()).Array[1, 2]
        from count in OneOf("", "", "count: 2", "count: 3")
        from stays in OneOf("", "stays: true")
        from masks in OneOf(Masks.ToArray()).Array[0, 2]
        from form in OneOf("", "", "form: bracket", "form: casting", "form: tube")
        from relief in OneOf("", "", "relief: 1.2")
        from bare in OneOf("", "", "bare-share: 25 %", "bare-share: 0 %")
        from other in OneOf("", "", "gauge: 1/8 in", "lead-test: negative", "faces: vertical", "near: [fuel line, airbag]", "heat: 180 °F", "spread: 20 %")
        select new DrawnSurface("", area / 2.0, shape, $"s{system}", Lines(
            $"material: {material}", $"finish: {finish}", $"condition: [{string.Join(", ", conditions.Distinct())}]", count, stays,
            masks.Length == 0 ? "" : $"mask: [{string.Join(", ", masks.Distinct())}]", form, relief, bare, other));

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(choice => choices[choice]);

    private static ImmutableArray<string> Lines(params string[] lines) => [.. lines.SelectMany(line => line.Split('\n')).Where(line => line.Length > 0)];
}
