namespace Condyle.Analyzers.Tests.Skeletons;

public class StevedoreFileTests
{
    [Theory]
    [InlineData("stevedore.gltf")]
    [InlineData("stevedore.bin")]
    public void The_checked_in_file_is_what_the_modelling_program_writes(string name)
    {
        var written = Modelling.Stevedore.Model().Single(file => file.Name == name).Bytes;

        Assert.Equal(written, File.ReadAllBytes(Repository.PathTo("sample-rigs", "Quayside", name)));
    }

    [Fact]
    public void The_model_is_the_same_every_time()
    {
        Assert.Equal(
            Modelling.Stevedore.Model().SelectMany(file => file.Bytes),
            Modelling.Stevedore.Model().SelectMany(file => file.Bytes));
    }
}
