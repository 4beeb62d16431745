using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>What keys ask for.</summary>
/// <param name="Word">What they ask for.</param>
/// <param name="Group">The heading under which help lists it.</param>
/// <param name="Brief">What it does, in a word or two.</param>
/// <param name="Means">What it does, in a sentence.</param>
/// <param name="Places">The places where it does something.</param>
/// <param name="Pressed">The keys, the first one named on screen.</param>
internal sealed record KeyRow(Word Word, string Group, string Brief, string Means, ImmutableArray<DeskPlace> Places, params ImmutableArray<KeyName> Pressed);
