using Terminal.Gui.Input;

namespace CoatPlan.App.Screens;

/// <summary>A key and what a person calls it.</summary>
/// <param name="Key">The key.</param>
/// <param name="Name">What it is called.</param>
internal sealed record KeyName(Key Key, string Name);
