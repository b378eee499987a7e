namespace Plumbmark.Engine.Bending;

/// <summary>One shape of which a section is built up: a strip with straight sides, or a round disc that may also be a hole.</summary>
public abstract record SectionPiece
{
    private SectionPiece() { }

    /// <summary>Height of the lowest fibre above the section's datum, m.</summary>
    public abstract double BottomMetres { get; }

    /// <summary>Height of the highest fibre above the section's datum, m.</summary>
    public abstract double TopMetres { get; }

    /// <summary>The moments of what lies below a height, about the section's datum line.</summary>
    /// <param name="heightMetres">The height; above the piece it gives the whole piece, below it nothing.</param>
    public abstract AreaMoments Below(double heightMetres);

    /// <summary>A trapezium with horizontal top and bottom; two equal widths make it a rectangle.</summary>
    /// <param name="Bottom">Height of the bottom edge, m.</param>
    /// <param name="Top">Height of the top edge, m; above the bottom.</param>
    /// <param name="BottomWidth">Width at the bottom, m; not negative.</param>
    /// <param name="TopWidth">Width at the top, m; not negative.</param>
    public sealed record Strip(double Bottom, double Top, double BottomWidth, double TopWidth) : SectionPiece
    {
        /// <inheritdoc/>
        public override double BottomMetres => Bottom;

        /// <inheritdoc/>
        public override double TopMetres => Top;

        /// <inheritdoc/>
        public override AreaMoments Below(double heightMetres)
        {
            if (heightMetres <= Bottom)
            {
                return default;
            }

            // Width w(s) = w₀ + g·s over s = y − Bottom, so the integrals are those of a cubic at most; then shift to the datum.
            var s = Math.Min(heightMetres, Top) - Bottom;
            var g = (TopWidth - BottomWidth) / (Top - Bottom);
            var own = new AreaMoments(
                s * (BottomWidth + (g * s / 2)),
                s * s * ((BottomWidth / 2) + (g * s / 3)),
                s * s * s * ((BottomWidth / 3) + (g * s / 4))
            );
            return own.AboutLineHigherBy(-Bottom);
        }
    }

    /// <summary>A full circle; <paramref name="Sign"/> is +1 for metal and −1 for a hole.</summary>
    /// <param name="Centre">Height of the centre, m.</param>
    /// <param name="Radius">Radius, m.</param>
    /// <param name="Sign">+1 or −1.</param>
    public sealed record Disc(double Centre, double Radius, int Sign) : SectionPiece
    {
        /// <inheritdoc/>
        public override double BottomMetres => Centre - Radius;

        /// <inheritdoc/>
        public override double TopMetres => Centre + Radius;

        /// <inheritdoc/>
        public override AreaMoments Below(double heightMetres)
        {
            // Chord 2·√(R² − y²), integrated from −R to u·R:
            //   A = R²(π/2 + asin u + u√(1−u²)),  S₁ = −⅔R³(1−u²)^{3/2},  S₂ = R⁴(π/8 + ¼(asin u − u√(1−u²)(1−2u²)))
            var u = Math.Clamp((heightMetres - Centre) / Radius, -1, 1);
            var root = Math.Sqrt((1 - u) * (1 + u));
            var arc = Math.Asin(u);
            var square = Sign * Radius * Radius;
            var own = new AreaMoments(
                square * ((Math.PI / 2) + arc + (u * root)),
                square * Radius * (-2.0 / 3) * root * root * root,
                square * Radius * Radius * ((Math.PI / 8) + ((arc - (u * root * (1 - (2 * u * u)))) / 4))
            );
            return own.AboutLineHigherBy(-Centre);
        }
    }
}
