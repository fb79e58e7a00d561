namespace Condyle.Analyzers.Tests.Skeletons;

public class SceneFileTests
{
    public static TheoryData<string> Names => [.. Modelling.Scene.Files().Select(file => file.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_checked_in_file_is_what_the_modelling_program_writes(string name)
    {
        var written = Modelling.Scene.Files().Single(file => file.Name == name).Bytes;

        Assert.Equal(written, File.ReadAllBytes(Repository.PathTo("sample-rigs", "Quayside", name)));
    }

    [Fact]
    public void The_models_are_the_same_every_time()
    {
        Assert.Equal(
            Modelling.Scene.Files().SelectMany(file => file.Bytes),
            Modelling.Scene.Files().SelectMany(file => file.Bytes));
    }
}
