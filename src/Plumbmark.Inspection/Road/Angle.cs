using System.Globalization;
using System.Text.RegularExpressions;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// An angle as a person gave it, in degrees and minutes, with the text as typed; <c>default</c> is 0°. Not a computed angle: that is a <see cref="double"/> in radians.
/// </summary>
/// <remarks>Equal means the same angle: 0°30' equals 0.5, and the text as typed plays no part.</remarks>
public readonly partial struct Angle : IEquatable<Angle>, IComparable<Angle>
{
    private readonly string? _typed;

    private Angle(decimal minutes, string? typed)
    {
        Minutes = minutes;
        _typed = typed;
    }

    /// <summary>The angle in minutes of arc, exactly as typed.</summary>
    public decimal Minutes { get; }

    /// <summary>The angle in degrees.</summary>
    public double Degrees => (double)Minutes / 60;

    /// <summary>The angle in radians.</summary>
    public double Radians => Degrees * Math.PI / 180;

    /// <summary>The text as the person wrote it; for an angle nobody typed, its degrees.</summary>
    public string AsTyped => _typed ?? (Minutes / 60).ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>A number of degrees.</summary>
    public static Angle FromDegrees(decimal degrees) => new(degrees * 60, null);

    /// <summary>
    /// Reads degrees, minutes or both: <c>1.5</c>, <c>1 1/2</c>, <c>1°30'</c>, <c>1 deg 30 min</c>, <c>-0°15'</c>, <c>30'</c>. A bare number is degrees.
    /// </summary>
    public static bool TryParse(string text, out Angle angle)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = Plain(text);
        var match = DegreesAlone().Match(plain);
        match = match.Success ? match : MinutesAlone().Match(plain);
        match = match.Success ? match : DegreesAndMinutes().Match(plain);
        angle = default;
        if (!match.Success || Number(match, "m") is not { } minutes || Degrees60(match) is not { } degrees)
        {
            return false;
        }

        var sum = degrees + minutes;
        angle = new Angle(match.Groups["minus"].Success ? -sum : sum, text.Trim());
        return !(match.Groups["d"].Success && minutes >= 60);
    }

    /// <inheritdoc/>
    public bool Equals(Angle other) => Minutes == other.Minutes;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Angle other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Minutes.GetHashCode();

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Minutes.CompareTo(other.Minutes);

    /// <inheritdoc/>
    public override string ToString() => AsTyped;

    /// <summary>The same angle.</summary>
    public static bool operator ==(Angle a, Angle b) => a.Equals(b);

    /// <summary>Not the same angle.</summary>
    public static bool operator !=(Angle a, Angle b) => !a.Equals(b);

    /// <summary>Smaller.</summary>
    public static bool operator <(Angle a, Angle b) => a.Minutes < b.Minutes;

    /// <summary>Larger.</summary>
    public static bool operator >(Angle a, Angle b) => a.Minutes > b.Minutes;

    /// <summary>Not larger.</summary>
    public static bool operator <=(Angle a, Angle b) => a.Minutes <= b.Minutes;

    /// <summary>Not smaller.</summary>
    public static bool operator >=(Angle a, Angle b) => a.Minutes >= b.Minutes;

    private static readonly (string Sign, string Text)[] s_signs =
    [
        ("½", " 1/2"),
        ("¼", " 1/4"),
        ("¾", " 3/4"),
        ("−", "-"),
        ("º", "°"),
        ("′", "'"),
        ("’", "'"),
    ];

    private static string Plain(string text) =>
        s_signs.Aggregate(text.Trim(), (t, s) => t.Replace(s.Sign, s.Text, StringComparison.Ordinal)).Trim();

    private static decimal? Degrees60(Match match)
    {
        if (Number(match, "d") is not { } whole || Number(match, "n") is not { } above)
        {
            return null;
        }

        var below = match.Groups["b"].Success ? Number(match, "b") : 1;
        return below is > 0 ? 60 * (whole + (above / below)) : null;
    }

    // A part that is not there counts nothing; a number too long for any angle is no number.
    private static decimal? Number(Match match, string group) =>
        !match.Groups[group].Success ? 0
        : decimal.TryParse(match.Groups[group].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && number < 1_000_000
            ? number
        : null;

    [GeneratedRegex(
        @"^(?:\+|(?<minus>-))?\s*(?:(?<d>\d+(?:\.\d+)?)|(?:(?<d>\d+)\s+)?(?<n>\d+)/(?<b>\d+))\s*(?:°|deg|degrees?)?$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex DegreesAlone();

    [GeneratedRegex(@"^(?:\+|(?<minus>-))?\s*(?<m>\d+(?:\.\d+)?)\s*(?:'|min|minutes?)$", RegexOptions.CultureInvariant)]
    private static partial Regex MinutesAlone();

    [GeneratedRegex(
        @"^(?:\+|(?<minus>-))?\s*(?<d>\d+)(?:\s*(?:°|deg|degrees?)\s*|\s+)(?<m>\d+(?:\.\d+)?)\s*(?:'|min|minutes?)?$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex DegreesAndMinutes();
}
