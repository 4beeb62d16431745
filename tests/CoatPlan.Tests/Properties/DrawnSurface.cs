using System.Globalization;

namespace CoatPlan.Tests.Properties;

/// <summary>A surface of a drawn job: its area as a figure, or a shape, and the other lines of its entry.</summary>
internal sealed record DrawnSurface(string Name, double AreaFt2, string? Shape, string System, ImmutableArray<string> Lines)
{
    public IEnumerable<string> Text(double areaFactor) =>
    [
        $"  - name: {Name}",
        Shape is null ? string.Create(CultureInfo.InvariantCulture, $"    area: {AreaFt2 * areaFactor:0.####} ft2") : $"    shape: [{Shape}]",
        $"    system: {System}",
        .. Lines.Select(line => "    " + line),
    ];
}
