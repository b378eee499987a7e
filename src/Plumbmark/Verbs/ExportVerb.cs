using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark export CAR</c>: writes a car from the shed as a car file.</summary>
internal static class ExportVerb
{
    /// <summary>What may be chosen.</summary>
    /// <param name="Car">The car's number or its exact name.</param>
    /// <param name="To">The file to write; null for standard output.</param>
    /// <param name="Data">The journal file; null for the user's own.</param>
    internal sealed record Options(string Car, string? To, string? Data);

    public static Command Command(Output output)
    {
        var car = new Argument<string>("CAR") { Description = Texts.Say("verb.export.the-cars-number-as-in") };
        var to = new Option<string>("--output", "-o")
        {
            Description = Texts.Say("verb.export.the-file-to-write-without"),
            HelpName = "FILE",
        };
        var data = DataOption.Create();
        var command = new Command("export", Texts.Say("verb.export.write-a-car-from-the")) { car, to, data };
        command.SetAction(parsed => Run(new Options(parsed.GetRequiredValue(car), parsed.GetValue(to), parsed.GetValue(data)), output));
        return command;
    }

    public static int Run(Options options, Output output)
    {
        using var journals = DataOption.Open(options.Data, output);
        var bytes = CarFileWriter.Write(Find(journals, options.Car).File);
        if (options.To is not { } path)
        {
            output.Result(bytes);
            return ExitCode.True;
        }

        try
        {
            File.WriteAllBytes(path, bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new InputRefusedException(Texts.Say("verb.export.the-file-cannot-be-written", path, e.Message));
        }

        output.Remark(Texts.Say("verb.export.written-to", path));
        return ExitCode.True;
    }

    private static OpenCar Find(Journals journals, string wanted)
    {
        if (long.TryParse(wanted, out var id) && journals.Car(id) is { } car)
        {
            return car;
        }

        var cars = journals.Cars();
        var named = cars.Where(c => c.File.Car.Name == wanted).ToList();
        var known =
            cars.Count == 0
                ? Texts.Say("verb.export.the-shed-is-empty")
                : Texts.Say("verb.export.in-the-shed-are", string.Join(", ", cars.Select(c => $"{c.Id} ({c.File.Car.Name})")));
        return named.Count switch
        {
            1 => named[0],
            0 => throw new InputRefusedException(Texts.Say("verb.export.there-is-no-car", wanted, known)),
            _ => throw new InputRefusedException(Texts.Say("verb.export.cars-are-called-say-which", named.Count, wanted, known)),
        };
    }
}
