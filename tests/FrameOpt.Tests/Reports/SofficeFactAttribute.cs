namespace FrameOpt.Tests.Reports;

/// <summary>A test that needs LibreOffice; it says so and is skipped where there is none.</summary>
public sealed class SofficeFactAttribute : FactAttribute
{
    public SofficeFactAttribute()
    {
        if (Soffice.Path is null)
            Skip = "LibreOffice (soffice) is not installed, so nothing here can recompute a workbook";
    }
}
