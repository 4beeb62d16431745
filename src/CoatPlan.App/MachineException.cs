namespace CoatPlan.App;

/// <summary>The machine cannot do now what is asked rightly: its disk is full or broken. Caught at the edge.</summary>
internal sealed class MachineException(string message, Exception cause) : Exception(message, cause);
