using System.CommandLine;
using Plumbmark.Inspection.Car;
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
        var car = new Argument<string>("CAR") { Description = "The car's number, as in the address of its page, or its exact name." };
        var to = new Option<string>("--output", "-o")
        {
            Description = "The file to write. Without it, standard output.",
            HelpName = "FILE",
        };
        var data = DataOption.Create();
        var command = new Command("export", "Write a car from the shed as a car file.") { car, to, data };
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
            throw new InputRefusedException($"The file \"{path}\" cannot be written: {e.Message}");
        }

        output.Remark($"Written to {path}.");
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
                ? "The shed is empty."
                : $"In the shed are: {string.Join(", ", cars.Select(c => $"{c.Id} ({c.File.Car.Name})"))}.";
        return named.Count switch
        {
            1 => named[0],
            0 => throw new InputRefusedException($"There is no car \"{wanted}\". {known}"),
            _ => throw new InputRefusedException($"{named.Count} cars are called \"{wanted}\"; say which by its number. {known}"),
        };
    }
}
