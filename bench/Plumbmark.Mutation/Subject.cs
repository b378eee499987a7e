namespace Plumbmark.Mutation;

/// <summary>What is changed and which tests must notice.</summary>
/// <param name="Name">What a person calls it.</param>
/// <param name="Project">The project, without Plumbmark.</param>
/// <param name="Files">The files changed, below the project's folder.</param>
/// <param name="Tests">Namespaces and classes of the tests.</param>
internal sealed record Subject(string Name, string Project, string[] Files, string[] Tests)
{
    private const string Inspection = "Plumbmark.Inspection.Tests";

    /// <summary>The four subjects whose tests must notice 80 changes in 100.</summary>
    public static IReadOnlyList<Subject> All { get; } =
    [
        new(
            "serial ranges",
            "Inspection",
            ["Book/Serials"],
            [$"{Inspection}.Book.SerialNumberTests", $"{Inspection}.Book.SerialRangeTests", $"{Inspection}.Book.SerialRangeLaws"]
        ),
        new("press gate", "Inspection", ["Press/Gate.cs"], [$"{Inspection}.Press.GateTests"]),
        new(
            "verdict",
            "Inspection",
            ["Floor/Verdicts"],
            [
                $"{Inspection}.Floor.Verdicts",
                $"{Inspection}.Floor.StoryTests",
                $"{Inspection}.Floor.Comparing",
                $"{Inspection}.Floor.DoubtTests",
            ]
        ),
        new(
            "adjustment",
            "Engine",
            [
                "Adjustment/DatumPlacement.cs",
                "Adjustment/DefectAnalysis.cs",
                "Adjustment/FitBuilder.cs",
                "Adjustment/NetworkAdjustment.cs",
                "Adjustment/NetworkFinish.cs",
                "Adjustment/NetworkFit.cs",
                "Adjustment/NetworkSolver.cs",
                "Adjustment/RowFactory.cs",
                "Adjustment/RowModel.cs",
            ],
            ["Plumbmark.Engine.Tests.Adjustment"]
        ),
    ];
}
