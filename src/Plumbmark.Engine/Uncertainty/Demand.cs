using System.Runtime.CompilerServices;

namespace Plumbmark.Engine.Uncertainty;

/// <summary>Refuses arguments that are bugs in the caller: not numbers, not probabilities, not positive.</summary>
internal static class Demand
{
    public static void Number(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (double.IsNaN(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be a number.");
        }
    }

    public static void Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be a finite number.");
        }
    }

    public static void Probability(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be a probability from 0 to 1.");
        }
    }

    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value > 0))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be positive.");
        }
    }

    public static void NotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= 0))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must not be negative.");
        }
    }
}
