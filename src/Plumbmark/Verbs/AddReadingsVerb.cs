using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark add-readings FILE READINGS -o out.json</c>: a car file with the readings of a CSV file added to its own.</summary>
internal static class AddReadingsVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var readings = new Argument<string>("READINGS") { Description = "A CSV file of readings; its heads say which column is what." };
        var to = new Option<string>("--output", "-o") { Description = "The car file to write, or - for standard output.", Required = true };
        var addPoints = new Option<bool>("--add-points") { Description = "Draw points that the readings name and the car does not have." };
        var command = new Command("add-readings", "Add the readings of a CSV file to a car file. Nothing is taken when a row is wrong.")
        {
            file,
            readings,
            to,
            addPoints,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetRequiredValue(file),
                parsed.GetRequiredValue(readings),
                parsed.GetRequiredValue(to),
                parsed.GetValue(addPoints),
                output
            )
        );
        return command;
    }

    public static int Run(string file, string readings, string to, bool addPoints, Output output) =>
        CarFileArgument.Run(
            file,
            output,
            car =>
                ReadingsCsv
                    .Read(CarFileArgument.Bytes(readings), car, addsPoints: addPoints)
                    .Match(
                        accepted =>
                        {
                            var frame = car.Frame with { Points = [.. car.Frame.Points, .. accepted.NewPoints] };
                            ResultFile.Write(
                                to,
                                CarFileWriter.Write(car with { Frame = frame, Readings = [.. car.Readings, .. accepted.Readings] }),
                                output
                            );
                            Tell(accepted, output);
                            return ExitCode.True;
                        },
                        faults =>
                        {
                            output.Remark($"{readings} is refused: {faults.Count} fault{(faults.Count == 1 ? "" : "s")}.");
                            foreach (var fault in faults)
                            {
                                output.Remark(fault.ToString());
                            }

                            return ExitCode.Refused;
                        }
                    )
        );

    private static void Tell(ReadingsCsvOutcome.Accepted accepted, Output output)
    {
        output.Remark($"{accepted.Readings.Count} readings added, {accepted.AlreadyThere} were there already.");
        if (accepted.NewPoints.Count > 0)
        {
            output.Remark($"New points: {string.Join(", ", accepted.NewPoints.Select(p => p.Id))}.");
        }

        if (accepted.UnusedColumns.Count > 0)
        {
            output.Remark($"Columns not used: {string.Join(", ", accepted.UnusedColumns)}.");
        }
    }
}
