using Plumbmark.Simulations;

// One verb for each simulation: dotnet run -c Release --project bench/Plumbmark.Simulations -- VERB
switch (args.FirstOrDefault())
{
    case "speed":
        Speed.Run(Console.Out);
        return 0;
    default:
        Console.Error.WriteLine("verbs: speed");
        return 64;
}
