namespace CoatPlan.Jobs.Yaml;

/// <summary>From where to where a value stands in its list or map; an alias stands elsewhere than what it repeats.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset behind it; of a block list or map, of what follows it.</param>
/// <param name="IsAlias">Whether an alias (<c>*name</c>) stands here.</param>
internal readonly record struct Stretch(int Start, int End, bool IsAlias);
