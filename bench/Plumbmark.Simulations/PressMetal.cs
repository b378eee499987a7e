namespace Plumbmark.Simulations;

/// <summary>A steel with memory: yield that rises or falls with use, and a back stress that makes it yield early the other way.</summary>
/// <remarks>
/// J.-L. Chaboche's model with one Armstrong-Frederick back stress and Voce isotropic hardening (textbook equations, from memory):
/// f = |σ − α| − (σ₀ + Q(1 − e^(−bp)) + H·p), dα = C·dε_p − γ·α·dp. Nothing of it is in the planner's model.
/// </remarks>
internal sealed record PressMetal(
    double Modulus,
    double Yield,
    double Back,
    double BackRate,
    double Isotropic,
    double IsotropicRate,
    double Linear
)
{
    private const int Iterations = 25;

    /// <summary>The stress after a further strain, and the tangent, from a state that is left as it was.</summary>
    public double Stress(in PressFibre from, double strain, out double tangent, out PressFibre to)
    {
        to = from;
        to.Strain = strain;
        var trial = from.Stress + (Modulus * (strain - from.Strain));
        var sign = Math.Sign(trial - from.BackStress);
        var over = (sign * (trial - from.BackStress)) - Radius(from.Plastic);
        if (over <= 0)
        {
            to.Stress = trial;
            tangent = Modulus;
            return trial;
        }

        // Backward Euler: dp ≥ 0 with sign·(σ_trial − E·sign·dp − α(dp)) = radius(p + dp), α(dp) = (α + C·sign·dp)/(1 + γ·dp).
        var c = Back * BackRate;
        double dp = 0;
        for (var i = 0; i < Iterations; i++)
        {
            var spread = 1 + (BackRate * dp);
            var alpha = (from.BackStress + (c * sign * dp)) / spread;
            var f = (sign * (trial - alpha)) - (Modulus * dp) - Radius(from.Plastic + dp);
            var slope = -Modulus - (((c - (BackRate * sign * alpha)) / spread)) - RadiusSlope(from.Plastic + dp);
            var step = -f / slope;
            dp += step;
            if (Math.Abs(step) < 1e-13)
            {
                break;
            }
        }

        var end = 1 + (BackRate * dp);
        to.BackStress = (from.BackStress + (c * sign * dp)) / end;
        to.Plastic = from.Plastic + dp;
        to.Stress = trial - (Modulus * sign * dp);
        var hardening = ((c - (BackRate * sign * to.BackStress)) / end) + RadiusSlope(to.Plastic);
        tangent = Modulus * Math.Max(0, hardening) / (Modulus + Math.Max(0, hardening));
        tangent = Math.Max(tangent, 1e-4 * Modulus); // keeps the section solver moving; equilibrium itself is exact
        return to.Stress;
    }

    private double Radius(double p) => Yield + (Isotropic * (1 - Math.Exp(-IsotropicRate * p))) + (Linear * p);

    private double RadiusSlope(double p) => (Isotropic * IsotropicRate * Math.Exp(-IsotropicRate * p)) + Linear;
}

/// <summary>What one fibre remembers.</summary>
internal struct PressFibre
{
    public double Strain;
    public double Stress;
    public double BackStress;
    public double Plastic;
}
