using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary><c>plumbmark import FILE</c>: puts the car in a file into the shed, all of it or nothing.</summary>
internal static class ImportVerb
{
    /// <summary>What may be chosen.</summary>
    /// <param name="File">The car file, or <c>-</c>.</param>
    /// <param name="Data">The journal file; null for the user's own.</param>
    internal sealed record Options(string File, string? Data);

    public static Command Command(Output output)
    {
        var file = CarFileArgument.Create();
        var data = DataOption.Create();
        var command = new Command("import", Texts.Say("verb.import.put-the-car-in-a")) { file, data };
        command.SetAction(parsed => Run(new Options(parsed.GetRequiredValue(file), parsed.GetValue(data)), output));
        return command;
    }

    public static int Run(Options options, Output output) =>
        CarFileArgument.Run(options.File, output, car => Import(car, options.Data, output));

    private static int Import(CarFile file, string? data, Output output)
    {
        using var journals = DataOption.Open(data, output);
        var car = journals.Add(file);
        output.Result($"{car.Id}\n");
        output.Remark(Texts.Say("verb.import.is-in-the-shed-as", file.Car.Name, car.Id));
        return ExitCode.True;
    }
}
