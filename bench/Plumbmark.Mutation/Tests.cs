using System.Diagnostics;
using System.Reflection;

namespace Plumbmark.Mutation;

/// <summary>
/// The tests of a subject, run by hand in this very process: once warm, a hundred changes take seconds. Facts and theories with data written beside
/// them; a test that needs more is left out, and its absence is told.
/// </summary>
internal sealed class Tests
{
    private readonly List<(string Name, Func<Task> Run)> _all = [];

    /// <summary>Finds the tests.</summary>
    /// <param name="assembly">The test assembly.</param>
    /// <param name="spaces">Namespaces, with all below them, or classes.</param>
    public Tests(Assembly assembly, IReadOnlyList<string> spaces)
    {
        foreach (var type in assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false, ContainsGenericParameters: false }))
        {
            if (spaces.Any(s => type.FullName == s || type.FullName!.StartsWith($"{s}.", StringComparison.Ordinal)))
            {
                foreach (var method in type.GetMethods())
                {
                    Add(type, method);
                }
            }
        }
    }

    /// <summary>How many cases there are.</summary>
    public int Count => _all.Count;

    /// <summary>Tests that are not run here.</summary>
    public List<string> LeftOut { get; } = [];

    /// <summary>Runs all once and puts the quick ones first; a test that fails on the code as it is, or takes longer than a second, is left out.</summary>
    public void Warm()
    {
        var timed = new List<(string, Func<Task>, TimeSpan Took)>();
        foreach (var (name, run) in _all)
        {
            var clock = Stopwatch.StartNew();
            var passes = Passes(run);
            clock.Restart();
            if (passes && Passes(run) && clock.ElapsedMilliseconds < 3000)
            {
                timed.Add((name, run, clock.Elapsed));
            }
            else
            {
                LeftOut.Add($"{name} ({(passes ? $"{clock.ElapsedMilliseconds} ms" : "not by this runner")})");
            }
        }

        _all.Clear();
        _all.AddRange(timed.OrderBy(t => t.Took).Select(t => (t.Item1, t.Item2)));
    }

    /// <summary>The first test that fails; null when none does.</summary>
    public string? FirstFailure() => _all.FirstOrDefault(t => !Passes(t.Run)).Name;

    private static bool Passes(Func<Task> run)
    {
        try
        {
            run().GetAwaiter().GetResult();
            return true;
        }
#pragma warning disable CA1031 // Whatever a test throws, it has failed.
        catch (Exception)
#pragma warning restore CA1031
        {
            return false;
        }
    }

    private void Add(Type type, MethodInfo method)
    {
        var marks = method.GetCustomAttributesData();
        var name = $"{type.Name}.{method.Name}";
        if (marks.Any(m => m.AttributeType.Name == "FactAttribute"))
        {
            _all.Add((name, () => Invoke(type, method, [])));
        }
        else if (marks.Any(m => m.AttributeType.Name == "TheoryAttribute"))
        {
            var parameters = method.GetParameters();
            foreach (var data in marks.Where(m => m.AttributeType.Name == "InlineDataAttribute"))
            {
                var values = data.ConstructorArguments.Count == 0 ? [] : ValuesOf(data.ConstructorArguments[0]);
                _all.Add((name, () => Invoke(type, method, Fit(values, parameters))));
            }

            foreach (var data in marks.Where(m => m.AttributeType.Name == "MemberDataAttribute"))
            {
                AddMember(type, method, name, (string)data.ConstructorArguments[0].Value!);
            }
        }
    }

    private void AddMember(Type type, MethodInfo method, string name, string member)
    {
        var from =
            (object?)type.GetProperty(member)?.GetValue(null)
            ?? type.GetField(member)?.GetValue(null)
            ?? type.GetMethod(member)?.Invoke(null, []);
        foreach (var row in (System.Collections.IEnumerable?)from ?? Array.Empty<object>())
        {
            // A row is an array, or one of xunit's rows, which give theirs by GetData().
            var values =
                row as object?[]
                ?? row.GetType().GetInterfaces().Select(i => i.GetMethod("GetData")).FirstOrDefault(m => m is not null)?.Invoke(row, [])
                    as object?[];
            if (values is null)
            {
                LeftOut.Add($"{name} (its data)");
                return;
            }

            _all.Add((name, () => Invoke(type, method, values)));
        }
    }

    private static object?[] ValuesOf(CustomAttributeTypedArgument argument) =>
        argument.Value is IReadOnlyCollection<CustomAttributeTypedArgument> many ? [.. many.Select(Plain)] : [Plain(argument)];

    private static object? Plain(CustomAttributeTypedArgument argument) =>
        argument.Value is IReadOnlyCollection<CustomAttributeTypedArgument> many ? many.Select(Plain).ToArray()
        : argument.ArgumentType.IsEnum ? Enum.ToObject(argument.ArgumentType, argument.Value!)
        : argument.Value;

    private static object?[] Fit(object?[] values, ParameterInfo[] parameters)
    {
        var fitted = new object?[parameters.Length];
        for (var i = 0; i < parameters.Length; i++)
        {
            var type = Nullable.GetUnderlyingType(parameters[i].ParameterType) ?? parameters[i].ParameterType;
            var value = i < values.Length ? values[i] : parameters[i].DefaultValue;
            fitted[i] =
                type.IsArray && parameters[i].GetCustomAttribute<ParamArrayAttribute>() is not null ? ArrayOf(type, values[i..])
                : value is IConvertible && !type.IsInstanceOfType(value) && !type.IsEnum ? Convert.ChangeType(value, type)
                : value;
        }

        return fitted;
    }

    private static Array ArrayOf(Type type, object?[] values)
    {
        var element = type.GetElementType()!;
        var array = Array.CreateInstance(element, values.Length);
        for (var i = 0; i < values.Length; i++)
        {
            array.SetValue(values[i], i);
        }

        return array;
    }

    private static async Task Invoke(Type type, MethodInfo method, object?[] arguments)
    {
        var instance = method.IsStatic ? null : Activator.CreateInstance(type);
        try
        {
            if (method.Invoke(instance, arguments) is Task task)
            {
                await task.ConfigureAwait(false);
            }
        }
        finally
        {
            (instance as IDisposable)?.Dispose();
        }
    }
}
