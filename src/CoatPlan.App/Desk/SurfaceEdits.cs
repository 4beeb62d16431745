using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.App.Desk;

/// <summary>Changes to the surfaces of a job's file; outside what is changed not a byte moves.</summary>
internal static class SurfaceEdits
{
    /// <summary>What stands in the list of pieces for one that is not in it.</summary>
    public const string AnotherPiece = "another piece";

    private const int MostDecimals = 6;

    private static readonly JobPath Surfaces = JobPath.Root.Key("surfaces");

    private static readonly Area AreaToStartFrom = Area.FromSquareFeet(1);

    /// <summary>A value of a surface as a person would type it.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="key">The key of the value: name, count or area.</param>
    public static string Typed(JobSurface surface, string key) => key switch
    {
        "name" => surface.Name,
        "count" => Written.Number(surface.Count, 0),
        "area" => surface.Area is { } area ? InItsOwnUnit(area) : "",
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "A value that is typed."),
    };

    /// <summary>Sets a value of a surface.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">The surface, from 0.</param>
    /// <param name="key">The key of the value.</param>
    /// <param name="value">The value, as a person types it.</param>
    public static JobEditing Set(JobDocument document, int at, string key, string value) =>
        JobEdit.Set(document, Surfaces.At(at).Key(key), JobValue.Of(value.Trim()));

    /// <summary>Sets the area of a surface; shapes that gave it before go.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">The surface, from 0.</param>
    /// <param name="value">The area, as a person types it.</param>
    /// <param name="hasShapes">Whether it has shapes now.</param>
    public static JobEditing SetArea(JobDocument document, int at, string value, bool hasShapes)
    {
        var set = Set(document, at, "area", value);
        return hasShapes && set.Document is { } withArea ? JobEdit.Remove(withArea, Surfaces.At(at).Key("shape")) : set;
    }

    /// <summary>Sets a list of a surface.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">The surface, from 0.</param>
    /// <param name="key">The key of the list.</param>
    /// <param name="values">Its items.</param>
    public static JobEditing SetList(JobDocument document, int at, string key, ImmutableArray<string> values) =>
        JobEdit.Set(document, Surfaces.At(at).Key(key), JobValue.ListOf(values.AsSpan()));

    /// <summary>Puts a copy of a surface behind it.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">The surface, from 0.</param>
    public static JobEditing Copy(JobDocument document, int at) => JobEdit.Copy(document, Surfaces, at);

    /// <summary>Deletes a surface.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">The surface, from 0.</param>
    public static JobEditing Delete(JobDocument document, int at) => JobEdit.Remove(document, Surfaces.At(at));

    /// <summary>Moves a surface.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">Where it stands, from 0.</param>
    /// <param name="to">Where it shall stand, from 0.</param>
    public static JobEditing Move(JobDocument document, int at, int to) => JobEdit.Move(document, Surfaces, at, to);

    /// <summary>Puts a new surface in.</summary>
    /// <param name="document">The job's file.</param>
    /// <param name="at">Where it shall stand, from 0.</param>
    /// <param name="piece">The usual piece it is; null for another one.</param>
    /// <param name="system">Key of the system that goes on it.</param>
    /// <param name="units">The job's units.</param>
    public static JobEditing Insert(JobDocument document, int at, Piece? piece, string system, PrintUnits units)
    {
        var entries = new List<(string Key, JobValue Value)>
        {
            ("name", JobValue.Of(piece is null ? "New piece" : Capital(piece.Name))),
            ("material", JobValue.Of(piece?.Materials.FirstOrDefault() ?? "steel")),
            ("condition", JobValue.ListOf("sound")),
            ("area", JobValue.Of(Rounded(piece?.Outline ?? AreaToStartFrom, units))),
        };
        if (piece is { Form: not "panel" })
            entries.Add(("form", JobValue.Of(piece.Form)));
        entries.Add(("system", JobValue.Of(system)));
        return JobEdit.Insert(document, Surfaces, at, new MapValue([.. entries.Select(entry => KeyValuePair.Create(entry.Key, entry.Value))]));
    }

    private static string InItsOwnUnit(Area area) =>
        $"{Written.Number(area.Value, MostDecimals)} {Area.GetAbbreviation(area.Unit, System.Globalization.CultureInfo.InvariantCulture)}";

    private static string Rounded(Area area, PrintUnits units) => units == PrintUnits.Metric
        ? $"{Written.Number(area.SquareMeters, 2)} m2"
        : $"{Written.Number(area.SquareFeet, 1)} ft2";

    private static string Capital(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
