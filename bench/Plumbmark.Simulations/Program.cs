using Plumbmark.Simulations;

return args switch
{
    ["floor", var frames] => FloorSimulation.Run(int.Parse(frames)),
    ["debug"] => Debug1.Run(),
    ["floor"] => FloorSimulation.Run(2000),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: Plumbmark.Simulations floor [FRAMES]");
    return 64;
}
