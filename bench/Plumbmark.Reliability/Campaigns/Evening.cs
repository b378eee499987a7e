using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>An evening's entry on one file, with a record of what was acknowledged: that, and only that, has been promised.</summary>
public sealed class Evening(string journal, int seed)
{
    private readonly Random _random = new(seed);
    private readonly List<Guid> _sent = [];

    /// <summary>Names of the readings that were acknowledged.</summary>
    public List<Guid> Acknowledged { get; } = [];

    /// <summary>The car that was acknowledged; null while none is.</summary>
    public long? Car { get; private set; }

    /// <summary>The photo that was acknowledged.</summary>
    public string? Photo { get; private set; }

    /// <summary>What the program said when something went wrong.</summary>
    public List<string> Sentences { get; } = [];

    /// <summary>Errors that were no sentence of ours: each is a finding.</summary>
    public List<string> Unhandled { get; } = [];

    /// <summary>Opens the file, puts a car in, takes readings, keeps a photo, closes, opens again and takes more. What fails is tried once more, as a person would.</summary>
    public void Spend()
    {
        Sit(readings: 6, photo: true);
        Sit(readings: 3, photo: false);
    }

    private void Sit(int readings, bool photo) =>
        Try(() =>
        {
            using var journals = Journals.Open(journal);
            Twice(() => Car ??= journals.Add(Named(), _sent.Count == 0 ? Remember() : _sent[0]).Id);
            for (var i = 0; i < readings && Car is not null; i++)
            {
                var name = Remember();
                Twice(() => Take(journals, name));
                if (photo && i == readings / 2)
                {
                    var bytes = new byte[30_000];
                    _random.NextBytes(bytes);
                    Twice(() => Photo = journals.KeepPhoto(Car.Value, "image/jpeg", bytes));
                }
            }
        });

    private void Take(Journals journals, Guid name)
    {
        var reading = new Reading.Plan($"r{_sent.Count}", "A.L", "A.R", Length.FromMillimetres(600 + _sent.Count));
        journals
            .Append(Car!.Value, name, null, _ => [new Act.ReadingTaken(reading)])
            .Match(
                _ => Acknowledge(name),
                _ => Acknowledge(name),
                faults => throw new InvalidOperationException(string.Join(' ', faults)),
                () => throw new InvalidOperationException("The car has gone.")
            );
    }

    private bool Acknowledge(Guid name)
    {
        if (!Acknowledged.Contains(name))
        {
            Acknowledged.Add(name);
        }

        return true;
    }

    private Guid Remember()
    {
        var bytes = new byte[16];
        _random.NextBytes(bytes);
        _sent.Add(new Guid(bytes));
        return _sent[^1];
    }

    private void Twice(Action act)
    {
        if (!Try(act))
        {
            Try(act);
        }
    }

    private bool Try(Action act)
    {
        try
        {
            act();
            return true;
        }
        catch (StoreUnusableException e)
        {
            Sentences.Add(e.Message);
            return false;
        }
        catch (Exception e)
        {
            Unhandled.Add(
                $"{e.GetType().Name}: {e.Message} {e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Plumbmark.Store"))}"
            );
            return false;
        }
    }

    private static CarFile Named() =>
        CarFile.Named("Kept", LengthUnit.Millimetre) with
        {
            Frame = new Frame([new FramePoint("A.L"), new FramePoint("A.R")], null),
        };

    /// <summary>Opens a file and says what of the promise does not hold there; empty when all of it does.</summary>
    public IReadOnlyList<string> BrokenIn(string file)
    {
        try
        {
            using var journals = Journals.Open(file);
            return [.. Broken(journals)];
        }
        catch (StoreUnusableException e)
        {
            return [$"does not open: {e.Message}"];
        }
    }

    private IEnumerable<string> Broken(Journals journals)
    {
        if (Car is null)
        {
            yield break;
        }

        if (journals.Car(Car.Value) is not { } car)
        {
            yield return "the car is lost";
            yield break;
        }

        var kept = car.Entries.Select(e => e.Entry.Id).ToList();
        foreach (var lost in Acknowledged.Except(kept))
        {
            yield return $"reading {Acknowledged.IndexOf(lost) + 1} of {Acknowledged.Count} is lost";
        }

        if (kept.Distinct().Count() != kept.Count)
        {
            yield return "a reading is there twice";
        }

        if (!kept.Where(Acknowledged.Contains).SequenceEqual(Acknowledged))
        {
            yield return "the readings are not in their order";
        }

        if (!car.Entries.Select(e => e.Sequence).SequenceEqual(Enumerable.Range(1, kept.Count).Select(i => (long)i)))
        {
            yield return "the places have gaps";
        }

        if (Photo is not null && journals.Photo(Car.Value, Photo)?.Bytes.Length != 30_000)
        {
            yield return "the photo is lost";
        }
    }
}
