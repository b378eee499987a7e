using System.Text;
using CsCheck;
using Plumbmark.Inspection.Car;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Car;

public class CarFileLaws
{
    [Fact]
    public void WriteThenRead_GivesTheSameCarAndTheSameBytes() =>
        CarFiles.Any.Sample(
            car =>
            {
                var bytes = CarFileWriter.Write(car);
                var read = Accepted(bytes);
                Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(CarFileWriter.Write(read)));
                Assert.Equal(car.Readings, read.Readings);
                Assert.Equal(car.Frame.Points, read.Frame.Points);
                Assert.Equal(car.Frame.Limits, read.Frame.Limits);
                Assert.Equal(car.Tools, read.Tools);
                Assert.Equal(car.Car, read.Car);
                Assert.Equal(car.Units, read.Units);
                Assert.Equal(car.Photos, read.Photos);
            },
            iter: 300
        );

    [Fact]
    public void Read_AnyCutOfAFile_IsRefusedWithAPlace() =>
        Gen.Select(CarFiles.Any, Gen.Double[0, 1])
            .Sample(
                (car, cut) =>
                {
                    var bytes = CarFileWriter.Write(car);
                    var length = (int)(cut * (bytes.Length - 3));
                    var refused = Assert.IsType<CarFileOutcome.Refused>(CarFileReader.Read(bytes.AsSpan(0, length)));
                    Assert.All(refused.Faults, f => Assert.True(f.Line >= 1));
                },
                iter: 300
            );

    [Fact]
    public void Read_AnyFlippedByte_NeverThrows() =>
        Gen.Select(CarFiles.Any, Gen.Int[0, 1_000_000], Gen.Byte)
            .Sample(
                (car, at, value) =>
                {
                    var bytes = CarFileWriter.Write(car);
                    bytes[at % bytes.Length] = value;
                    Assert.NotNull(CarFileReader.Read(bytes));
                },
                iter: 1000
            );

    [Fact]
    public void Read_AnyBytes_NeverThrows() =>
        Gen.Byte.Array[0, 200].Sample(bytes => Assert.NotNull(CarFileReader.Read(bytes)), iter: 2000);

    private static CarFile Accepted(byte[] bytes) =>
        CarFileReader
            .Read(bytes)
            .Match(
                file => file,
                faults => throw new InvalidOperationException(string.Join('\n', faults) + "\n" + Encoding.UTF8.GetString(bytes))
            );
}
