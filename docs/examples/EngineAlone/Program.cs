using System.Globalization;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using static Plumbmark.Engine.Adjustment.Observation;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

// 1. What is on the paper: four holes of a bay, six lengths between their floor marks, as they were written down.
(string From, string To, string Written)[] paper =
[
    ("A.L", "B.L", "33 3/16"),
    ("A.R", "B.R", "33 1/8"),
    ("A.L", "A.R", "26 3/4"),
    ("B.L", "B.R", "27 5/16"),
    ("A.L", "B.R", "42 7/8"),
    ("A.R", "B.L", "42 3/4"),
];

// 2. How sure it is. The division and the two ends belong to each reading; zero and scale are the tape's own and common to all.
var oneReading = ReadingUncertainty.BetweenMarks(divisionMetres: 0.0254 / 16);
var classTwo = TapeAccuracy.OfClass(TapeClass.II)!;
var tape = new NetworkTool("tape") { ZeroSigmaMetres = classTwo.ZeroPriorMetres, ScaleSigma = classTwo.ScalePriorPerMetre };

// 3. The network. A sketch gives start values and nothing else; one plumb drop leaves half a millimetre at every point.
NetworkPoint Hole(string id, double xMetres, double yMetres) =>
    new(id)
    {
        SketchXMetres = xMetres,
        SketchYMetres = yMetres,
        DropSigmaMetres = CommonPractice.DropMetres,
    };
double Metres(string written) =>
    LengthText.Read(written, LengthUnit.Inch).Match(read: l => l.Metres, refused: r => throw new FormatException(r.Sentence));

var network = new Network(
    [Hole("A.L", 0.8, 0.3), Hole("A.R", 0.8, -0.3), Hole("B.L", 0, 0.3), Hole("B.R", 0, -0.3)],
    paper.Select((p, i) => new PlanDistance($"r{i + 1}", p.From, p.To, Metres(p.Written), oneReading.StandardUncertaintyMetres, tape.Id)),
    [tape]
);

// 4. Solve. What the readings leave open is an answer too, so every outcome has a road of its own.
var fit = NetworkAdjustment
    .Solve(network)
    .Match(
        adjusted: a => a.Fit,
        loose: l => throw new InvalidOperationException("Some points hang on nothing."),
        notConverged: n => throw new InvalidOperationException("No resting place."),
        refused: r => throw new InvalidOperationException($"{r.Faults.Count} faults.")
    );
Console.WriteLine($"checks left over: {fit.Redundancy}; chance of so large a misfit: {fit.ChiSquareProbability:0.00}");
foreach (var reading in fit.Readings)
{
    Console.WriteLine(
        $"{reading.Id}  residual {reading.ResidualMetres * 1000, 6:0.00} mm   an error would show from {reading.MinimalDetectableMetres * 1000:0.0} mm"
    );
}

// 5. Any function of the points has a value and a standard uncertainty from the full covariance: how far the left rail stands ahead.
var estimate = fit.Covariance.Evaluate(at => LeftAhead(at, fit.Covariance));
Console.WriteLine($"left ahead of right {estimate.Value * 1000:0.0} mm, standard uncertainty {estimate.Sigma * 1000:0.0} mm");

// 6. Is that within an eighth of an inch? ISO 14253-1: true from 95 %, out below 5 %, and between them nobody can tell.
var within = ConformityProbability.Between(estimate.Value, estimate.Sigma, -0.0254 / 8, 0.0254 / 8);
Console.WriteLine($"within 1/8 in with probability {within:0.000}: {DecisionRule.Default.Decide(within)}");

// The stagger of the two rails along the centre line through the middles of both pairs.
static double LeftAhead(ReadOnlySpan<double> at, NetworkCovariance covariance)
{
    double alX = at[covariance.IndexOf("A.L", Axis.X)!.Value],
        alY = at[covariance.IndexOf("A.L", Axis.Y)!.Value];
    double arX = at[covariance.IndexOf("A.R", Axis.X)!.Value],
        arY = at[covariance.IndexOf("A.R", Axis.Y)!.Value];
    double blX = at[covariance.IndexOf("B.L", Axis.X)!.Value],
        blY = at[covariance.IndexOf("B.L", Axis.Y)!.Value];
    double brX = at[covariance.IndexOf("B.R", Axis.X)!.Value],
        brY = at[covariance.IndexOf("B.R", Axis.Y)!.Value];
    double cx = (alX + arX - blX - brX) / 2,
        cy = (alY + arY - blY - brY) / 2,
        length = double.Hypot(cx, cy);
    return ((alX - arX + blX - brX) * cx + (alY - arY + blY - brY) * cy) / (2 * length);
}
