using Condyle.Runtime.Baking.Reports;

namespace Condyle.Runtime.Tests.Baking;

public class FiguresTests
{
    [Theory]
    [InlineData("lamp", "most at 'lamp', 9.4 s")]
    [InlineData("drum", "most at 'lamp', 9.4 s; in degrees at 'drum', 2.5 s")]
    public void Each_figure_has_its_joint(string turned, string said) =>
        Assert.Equal(said, Figures.MostAt(new Deviation(new Peak(0.001, "lamp", 9.4f), new Peak(180, turned, 2.5f))));
}
