using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark add-readings FILE READINGS -o out.json</c>: a car file with the readings of a CSV file added to its own.</summary>
internal static class AddReadingsVerb
{
    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var readings = new Argument<string>("READINGS") { Description = Texts.Say("verb.add-readings.a-csv-file-of-readings") };
        var to = new Option<string>("--output", "-o")
        {
            Description = Texts.Say("verb.add-readings.the-car-file-to-write"),
            Required = true,
        };
        var addPoints = new Option<bool>("--add-points") { Description = Texts.Say("verb.add-readings.draw-points-that-the-readings") };
        var command = new Command("add-readings", Texts.Say("verb.add-readings.add-the-readings-of-a")) { file, readings, to, addPoints };
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
                            output.Remark(
                                Texts.Say("verb.add-readings.is-refused-fault", readings, faults.Count, faults.Count == 1 ? "" : "s")
                            );
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
        output.Remark(Texts.Say("verb.add-readings.readings-added-were-there-already", accepted.Readings.Count, accepted.AlreadyThere));
        if (accepted.NewPoints.Count > 0)
        {
            output.Remark(Texts.Say("verb.add-readings.new-points", string.Join(", ", accepted.NewPoints.Select(p => p.Id))));
        }

        if (accepted.UnusedColumns.Count > 0)
        {
            output.Remark(Texts.Say("verb.add-readings.columns-not-used", string.Join(", ", accepted.UnusedColumns)));
        }
    }
}
