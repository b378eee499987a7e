namespace Plumbmark.Inspection.Bench;

/// <summary>What is believed of a part before anything is measured. Our own choices, in one place; bench/results/bench.txt counts what they do, on parts that they were not chosen by.</summary>
/// <param name="Bent">A part out of a box is bent: one in twenty-five.</param>
/// <param name="NoneOfThese">It is of no type the book knows: one in a hundred.</param>
/// <param name="SerialWeight">A type fitted to this car's serial number is so many times likelier than another: parts get swapped between cars.</param>
/// <param name="NumberWeight">A number that the book lists for a type makes it so many times likelier: numbers are evidence, not proof.</param>
/// <param name="Moved">A bend moves any one dimension: three times in five, so that a part that differs in every dimension is taken to be bent rather than of another type and bent too.</param>
/// <param name="BendMetres">Usual size of what a bend does to a length.</param>
/// <param name="BendRadians">Usual size of what a bend does to an angle.</param>
/// <param name="UntoldToleranceMetres">How far new parts of one type differ where the book gives no tolerance; a length.</param>
/// <param name="UntoldToleranceRadians">The same for an angle.</param>
public sealed record VariantPriors(
    double Bent = 0.04,
    double NoneOfThese = 0.01,
    double SerialWeight = 4,
    double NumberWeight = 10,
    double Moved = 0.6,
    double BendMetres = 5e-3,
    double BendRadians = 2 * Math.PI / 180,
    double UntoldToleranceMetres = 0.5e-3,
    double UntoldToleranceRadians = 0.3 * Math.PI / 180
)
{
    /// <summary>What is taken when nothing else is chosen.</summary>
    public static VariantPriors Default { get; } = new();
}
