namespace CoatPlan.Tests.Validator;

/// <summary>Vapour over water by the improved Magnus form. Source: Alduchov and Eskridge 1996, J. Appl. Meteor. 35(4) 601-609 (from memory).</summary>
internal static class Psychrometry
{
    public static double SaturationHpa(double celsius) => 6.1094 * Math.Exp(17.625 * celsius / (243.04 + celsius));

    public static double DewPointC(double vapourHpa)
    {
        double gamma = Math.Log(vapourHpa / 6.1094);
        return 243.04 * gamma / (17.625 - gamma);
    }
}
