using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>A number with its unit as a person wrote it: a length, an angle or a spring rate. Not a measured value: that is a <see cref="DimensionValue"/>.</summary>
public abstract record Amount
{
    private Amount() { }

    /// <summary>What sort of number it is.</summary>
    public abstract Quantity Quantity { get; }

    /// <summary>The number in metres, radians or newtons per metre.</summary>
    public abstract double Si { get; }

    /// <summary>A length.</summary>
    /// <param name="Value">As typed.</param>
    public sealed record OfLength(Length Value) : Amount
    {
        /// <inheritdoc/>
        public override Quantity Quantity => Quantity.Length;

        /// <inheritdoc/>
        public override double Si => Value.Metres;
    }

    /// <summary>An angle.</summary>
    /// <param name="Degrees">Degrees.</param>
    public sealed record OfAngle(decimal Degrees) : Amount
    {
        /// <inheritdoc/>
        public override Quantity Quantity => Quantity.Angle;

        /// <inheritdoc/>
        public override double Si => (double)Degrees * Math.PI / 180;
    }

    /// <summary>A spring rate.</summary>
    /// <param name="Number">The number before the unit.</param>
    /// <param name="Unit">The unit it was written in.</param>
    public sealed record OfRate(decimal Number, RateUnit Unit) : Amount
    {
        // lbf = 0.45359237 kg x 9.80665 m/s² exactly (NIST SP 811, B.8); 1 lbf/in = 175.1268 N/m.
        private const double PoundForcePerInch = Load.PoundForceNewtons / 0.0254;

        /// <inheritdoc/>
        public override Quantity Quantity => Quantity.Rate;

        /// <inheritdoc/>
        public override double Si => (double)Number * (Unit == RateUnit.PoundForcePerInch ? PoundForcePerInch : 1000);
    }
}
