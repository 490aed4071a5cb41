package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;

/**
 * Lines through points whose numbers stand in cells. Black on white, so that it can be read without
 * colours.
 *
 * @param description what it shows, for those who cannot see it
 * @param across what runs across
 * @param up what runs up
 * @param to where the axis across ends; it begins at 0
 * @param pattern in which the numbers across are written
 * @param lines what is drawn, in order
 * @param named whether the names of the lines stand below
 */
public record LineChart(
    String description,
    String across,
    String up,
    double to,
    String pattern,
    List<Line> lines,
    boolean named) {

  /** How a line looks. */
  public enum Look {
    /** A thick line. */
    THICK,
    /** A thin line. */
    THIN,
    /** A thick broken line. */
    BROKEN,
    /** A thin line between diamonds. */
    MARKED,
    /** Small crosses without a line. */
    CROSSES
  }

  /**
   * A line.
   *
   * @param name of the line
   * @param xs cells of the places across, on the sheet of the chart
   * @param ys cells of the heights, as many
   * @param look how it looks
   */
  public record Line(String name, CellRange xs, CellRange ys, Look look) {}

  /** A pattern for whole numbers. */
  public static final String WHOLE = "#,##0";

  /** A pattern for numbers with as many digits as they need. */
  public static final String GENERAL = "General";

  /** How many rows of the sheet it takes. */
  public static final int ROWS = 22;

  private static final int LAST_COLUMN = 6;
  private static final String ENGLISH = "en-GB";
  private static final byte[] BLACK = {0, 0, 0};
  private static final byte[] GREY = {(byte) 0xB4, (byte) 0xB4, (byte) 0xB4};
  private static final double THICK = 1.75;
  private static final double THIN = 0.5;

  public LineChart {
    lines = List.copyOf(lines);
  }

  /** Draws it on its sheet, whose rows are given, from a row on. */
  void place(XSSFSheet sheet, SheetRows rows, int row) {
    XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, 0, row, LAST_COLUMN, row + ROWS);
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
    chart
        .getGraphicFrame()
        .getCTGraphicalObjectFrame()
        .getNvGraphicFramePr()
        .getCNvPr()
        .setDescr(description);
    // The heading over the chart is its title.
    chart.setAutoTitleDeleted(true);
    // Else a line of fewer points is led on to nought.
    chart.displayBlanksAs(DisplayBlanks.GAP);
    XDDFValueAxis bottom = chart.createValueAxis(AxisPosition.BOTTOM);
    bottom.setTitle(across);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    left.setTitle(up);
    left.setCrosses(AxisCrosses.MIN);
    bottom.setCrosses(AxisCrosses.AUTO_ZERO);
    bottom.setTickLabelPosition(AxisTickLabelPosition.LOW);
    bottom.setMinimum(0);
    bottom.setMaximum(to);
    bottom.setNumberFormat(pattern);
    left.setNumberFormat(GENERAL);
    grid(bottom);
    grid(left);
    XDDFScatterChartData data =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, bottom, left);
    data.setStyle(ScatterStyle.LINE);
    data.setVaryColors(false);
    for (Line line : lines) {
      draw(line, add(data, rows, line.xs(), line.ys()));
    }
    if (named) {
      chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    }
    chart.plot(data);
    chart.getCTChart().getPlotArea().getValAxList().forEach(LineChart::inEnglish);
  }

  /** The library would name the language of the machine. */
  private static void inEnglish(CTValAx axis) {
    axis.getTitle()
        .getTx()
        .getRich()
        .getPList()
        .forEach(words -> words.getRList().forEach(run -> run.getRPr().setLang(ENGLISH)));
  }

  private static XDDFScatterChartData.Series add(
      XDDFScatterChartData data, SheetRows rows, CellRange xs, CellRange ys) {
    return (XDDFScatterChartData.Series) data.addSeries(source(rows, xs), source(rows, ys));
  }

  private static XDDFNumericalDataSource<Double> source(SheetRows rows, CellRange cells) {
    List<Double> values = new ArrayList<>();
    for (int row = cells.first().row(); row <= cells.last().row(); row++) {
      for (int column = cells.first().column(); column <= cells.last().column(); column++) {
        values.add(rows.numberAt(row, column));
      }
    }
    return XDDFDataSourcesFactory.fromArray(values.toArray(Double[]::new), cells.absolute());
  }

  private static void draw(Line line, XDDFScatterChartData.Series series) {
    series.setTitle(line.name(), null);
    series.setSmooth(false);
    series.setMarkerStyle(
        switch (line.look()) {
          case MARKED -> MarkerStyle.DIAMOND;
          case CROSSES -> MarkerStyle.X;
          case THICK, THIN, BROKEN -> MarkerStyle.NONE;
        });
    XDDFLineProperties ink =
        switch (line.look()) {
          case THICK, BROKEN -> ink(BLACK, THICK);
          case THIN, MARKED -> ink(BLACK, THIN);
          case CROSSES -> new XDDFLineProperties(new XDDFNoFillProperties());
        };
    if (line.look() == Look.BROKEN) {
      ink.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
    }
    series.setLineProperties(ink);
    if (line.look() == Look.CROSSES) {
      XDDFShapeProperties black = new XDDFShapeProperties();
      black.setLineProperties(ink(BLACK, THIN));
      series.getCTScatterSer().getMarker().setSpPr(black.getXmlObject());
    }
  }

  private static XDDFLineProperties ink(byte[] colour, double width) {
    XDDFLineProperties properties =
        new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
    properties.setWidth(width);
    return properties;
  }

  private static void grid(XDDFChartAxis axis) {
    XDDFLineProperties lines = ink(GREY, THIN);
    lines.setPresetDash(new XDDFPresetLineDash(PresetLineDash.SOLID));
    axis.getOrAddMajorGridProperties().setLineProperties(lines);
    axis.getOrAddShapeProperties().setLineProperties(ink(BLACK, THIN));
  }
}
