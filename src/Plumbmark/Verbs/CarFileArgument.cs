using System.CommandLine;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Verbs;

/// <summary>The car file that most verbs take: a path, or <c>-</c> for standard input.</summary>
internal static class CarFileArgument
{
    public static Argument<string> Create() => new("FILE") { Description = Texts.Say("verb.car-file-argument.a-car-file-or-for") };

    /// <summary>The bytes of the file.</summary>
    /// <exception cref="InputRefusedException">There is no such file, or it cannot be read.</exception>
    public static byte[] Bytes(string path)
    {
        try
        {
            if (path != "-")
            {
                return File.ReadAllBytes(path);
            }

            using var memory = new MemoryStream();
            using var input = Console.OpenStandardInput();
            input.CopyTo(memory);
            return memory.ToArray();
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new InputRefusedException(Texts.Say("verb.car-file-argument.there-is-no-file", path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputRefusedException(Texts.Say("verb.car-file-argument.the-file-cannot-be-read", path, e.Message));
        }
    }

    /// <summary>Runs a verb on the car in a file; a refused file is told with all its faults, as JSON too where the verb speaks JSON.</summary>
    public static int Run(string path, Output output, Func<CarFile, int> verb, bool asJson = false) =>
        CarFileReader.Read(Bytes(path)).Match(verb, faults => Refuse(path, output, faults, asJson));

    /// <summary>Runs a verb on the cars in two files; both are read before either is refused, so that every fault is told.</summary>
    public static int Run(string path, string second, Output output, Func<CarFile, CarFile, int> verb)
    {
        var (first, other) = (CarFileReader.Read(Bytes(path)), CarFileReader.Read(Bytes(second)));
        return first.Match(
            car => other.Match(later => verb(car, later), faults => Refuse(second, output, faults, asJson: false)),
            faults =>
            {
                Refuse(path, output, faults, asJson: false);
                return other.Match(_ => ExitCode.Refused, more => Refuse(second, output, more, asJson: false));
            }
        );
    }

    /// <summary>The same for a verb that needs the lengths to hold together: a file whose lengths fall into pieces is refused with what would tie them.</summary>
    public static int RunTied(string path, Output output, Func<CarFile, int> verb, bool asJson)
    {
        var bytes = Bytes(path);
        return CarFileReader
            .Read(bytes)
            .Match(
                car => PlanPieces.Faults(car, bytes) is { Count: > 0 } apart ? Refuse(path, output, apart, asJson) : verb(car),
                faults => Refuse(path, output, faults, asJson)
            );
    }

    /// <summary>Tells every fault of a refused file.</summary>
    public static int Refuse(string path, Output output, IReadOnlyList<Fault> faults, bool asJson)
    {
        output.Remark(Texts.Say("verb.car-file-argument.is-refused-fault", path, faults.Count, faults.Count == 1 ? "" : "s"));
        foreach (var fault in faults)
        {
            output.Remark(fault.ToString());
        }

        if (asJson)
        {
            output.Result(RefusedJson.Bytes(faults));
        }

        return ExitCode.Refused;
    }
}
