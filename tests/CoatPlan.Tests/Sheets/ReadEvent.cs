namespace CoatPlan.Tests.Sheets;

/// <summary>An event that was read, with its alarms; a property named twice fails the reading.</summary>
internal sealed class ReadEvent
{
    public Dictionary<string, string> Properties { get; } = [];

    public List<Dictionary<string, string>> Alarms { get; } = [];
}
