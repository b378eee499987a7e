using System.Globalization;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>How the Road's numbers are shown: angles in degrees and minutes as the workshop speaks, lengths in the car's units, toe also as a length at the rim.</summary>
/// <param name="Units">The car's units.</param>
/// <param name="Diameter">Where toe is measured, from the book's toe figure; null when not told.</param>
public sealed record RoadDisplay(LengthUnit Units, Length? Diameter)
{
    // Nothing in a home workshop is read finer than this.
    private static readonly Length s_inchDivision = Length.FromInches(0.01m);
    private static readonly Length s_millimetreDivision = Length.FromMillimetres(0.1m);

    /// <summary>How a car's numbers are shown.</summary>
    public static RoadDisplay Of(Car.CarFile car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var toe = car.Road?.Book.FirstOrDefault(b => b.Kind == FigureKind.ToeIn);
        var amount = toe?.Value ?? toe?.Limit ?? toe?.Least ?? toe?.Most;
        return new(car.Units, (amount as FigureAmount.OfToe)?.Diameter);
    }

    // What a linkage that does not go together gives.
    private static string NotKnown => Texts.Say("road.display.not-known");

    /// <summary>An angle with its sign, to the minute: <c>+0°24'</c>.</summary>
    public static string Signed(double radians)
    {
        if (!double.IsFinite(radians))
        {
            return NotKnown;
        }

        var minutes = WholeMinutes(radians);
        var sign =
            minutes < 0 ? "−"
            : minutes > 0 ? "+"
            : "";
        return sign + Plain(Math.Abs(minutes));
    }

    /// <summary>An angle's size, to the minute: <c>0°24'</c>.</summary>
    public static string Size(double radians) => double.IsFinite(radians) ? Plain(Math.Abs(WholeMinutes(radians))) : NotKnown;

    /// <summary>A length with its sign, in the car's units.</summary>
    public string Signed(Length length)
    {
        var shown = Show(length.Abs());
        return shown == Show(Length.Zero) ? shown
            : length < Length.Zero ? $"−{shown}"
            : length > Length.Zero ? $"+{shown}"
            : shown;
    }

    /// <summary>A length in metres with its sign, in the car's units.</summary>
    public string SignedLength(double metres) => double.IsFinite(metres) ? Signed(ToLength(metres)) : NotKnown;

    /// <summary>The size of a length in metres, in the car's units.</summary>
    public string LengthSize(double metres) => double.IsFinite(metres) ? Show(ToLength(Math.Abs(metres))) : NotKnown;

    /// <summary>A figure's value with its sign.</summary>
    public string Value(FigureKind kind, double value) =>
        RoadFigures.UnitOf(kind) == FigureUnit.Length ? SignedLength(value) : Signed(value);

    /// <summary>A figure's value as it is usually said: a wheelbase or a track without a sign.</summary>
    public string Said(FigureKind kind, double value) =>
        kind is FigureKind.Wheelbase or FigureKind.FrontTrack or FigureKind.RearTrack ? LengthSize(value) : Value(kind, value);

    /// <summary>The size of a figure's value.</summary>
    public string Size(FigureKind kind, double value) => RoadFigures.UnitOf(kind) == FigureUnit.Length ? LengthSize(value) : Size(value);

    /// <summary>Toe of both wheels as a length where the book measures it; null when the book tells no diameter.</summary>
    public string? ToeAtRim(double totalToeRadians)
    {
        if (Diameter is not { } diameter)
        {
            return null;
        }

        var difference = RimReading.BehindMinusAhead(totalToeRadians, diameter.Metres);
        return Texts.Say("road.display.toe-at", LengthSize(difference), difference < 0 ? "out" : "in", diameter.AsTyped);
    }

    private static int WholeMinutes(double radians) => (int)Math.Round(radians * 180 * 60 / Math.PI, MidpointRounding.AwayFromZero);

    private static string Plain(int minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}°{minutes % 60:00}'");

    private static Length ToLength(double metres) =>
        // Far beyond any car the exact type would refuse it; a thousand kilometres is nonsense enough to show.
        Length.FromMillimetres((decimal)Math.Clamp(Math.Round(1000 * metres, 6), -1e9, 1e9));

    private string Show(Length length) => length.Format(Units == LengthUnit.Inch ? s_inchDivision : s_millimetreDivision);
}
