using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Web.Floor;

/// <summary>The keys for a value: digits, and for inches the denominators that the chosen tool reads. It only writes into the field; the field is what is sent.</summary>
/// <param name="Unit">The unit of a bare number.</param>
/// <param name="Denominators">Denominators of the fractions, halves first; empty in millimetres.</param>
/// <param name="MayBeNegative">Whether there is a minus.</param>
public sealed record Keypad(LengthUnit Unit, IReadOnlyList<int> Denominators, bool MayBeNegative)
{
    private const int UsualFinest = 16; // a tape in sixteenths, when no tool tells its division

    /// <summary>The keys for what stands in the form.</summary>
    public static Keypad Of(CarFile car, EntryForm form)
    {
        if (car.Units != LengthUnit.Inch)
        {
            return new Keypad(car.Units, [], form.Kind.MayBeNegative);
        }

        var division = car.Tools.FirstOrDefault(t => t.Id == form.Tool)?.Division;
        return new Keypad(car.Units, [.. Halvings(FinestOf(division))], form.Kind.MayBeNegative);
    }

    /// <summary>Whether bare numbers are inches.</summary>
    public bool IsInInches => Unit == LengthUnit.Inch;

    /// <summary>The unit that one reading may be in instead.</summary>
    public string OtherUnit => IsInInches ? "mm" : "in";

    private static int FinestOf(Length? division)
    {
        if (division is not { Unit: LengthUnit.Inch } d || d <= Length.Zero)
        {
            return UsualFinest;
        }

        // A division that is no fraction of a tape (0.12 in) leaves the usual keys; decimals can be typed all the same.
        var denominator = d.ExactInches.Denominator;
        return denominator.IsPowerOfTwo && denominator <= 64 ? Math.Max(2, (int)denominator) : UsualFinest;
    }

    private static IEnumerable<int> Halvings(int finest)
    {
        for (var denominator = 2; denominator <= finest; denominator *= 2)
        {
            yield return denominator;
        }
    }
}
