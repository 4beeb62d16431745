using System.Globalization;

namespace CoatPlan.Tests.Outside;

/// <summary>One row of a published table.</summary>
internal sealed record CheckRow(ImmutableDictionary<string, string> Fields)
{
    public string this[string field] => Fields[field];

    public double Number(string field) => double.Parse(Fields[field], CultureInfo.InvariantCulture);

    public double? Maybe(string field) => Fields[field].Length == 0 ? null : Number(field);

    /// <summary>One of the named numbers of a field like <c>d=1;h=2</c>; several values of one name are split by a bar.</summary>
    public ImmutableArray<double> Named(string field, string name) =>
    [
        .. Fields[field].Split(';').Select(part => part.Split('=')).Single(part => part[0] == name)[1]
            .Split('|').Select(value => double.Parse(value, CultureInfo.InvariantCulture)),
    ];

    public string Word(string field, string name) => Fields[field].Split(';').Select(part => part.Split('=')).Single(part => part[0] == name)[1];
}
