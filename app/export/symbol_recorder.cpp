// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/symbol_recorder.h"

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QSvgRenderer>

namespace howlmap::app {
namespace {

class NotingEngine : public QPaintEngine {
  public:
    explicit NotingEngine(std::vector<RecordedPath>& notes) : QPaintEngine(AllFeatures), notes_(notes) {}
    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    Type type() const override { return User; }
    void drawPath(const QPainterPath& path) override {
        const QPen pen = state->pen();
        const QBrush brush = state->brush();
        const QTransform to_svg = state->transform();
        const bool stroked = pen.style() != Qt::NoPen && pen.color().alpha() > 0;
        const bool filled = brush.style() != Qt::NoBrush && brush.color().alpha() > 0;
        const double scale = std::sqrt(std::abs(to_svg.determinant()));
        notes_.push_back({to_svg.map(path), stroked, filled, pen.widthF() * scale, brush.color().lightnessF()});
    }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        QPainterPath path;
        path.addPolygon(QPolygonF(QList<QPointF>(points, points + count)));
        if (mode != PolylineMode) path.closeSubpath();
        drawPath(path);
    }

  private:
    std::vector<RecordedPath>& notes_;
};

class NotingDevice : public QPaintDevice {
  public:
    explicit NotingDevice(std::vector<RecordedPath>& notes) : engine_(notes) {}
    QPaintEngine* paintEngine() const override { return &engine_; }

  protected:
    int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
            case PdmWidth:
            case PdmHeight:
                return 10000;
            case PdmDpiX:
            case PdmDpiY:
            case PdmPhysicalDpiX:
            case PdmPhysicalDpiY:
                return 96;
            case PdmDevicePixelRatio:
                return 1;
            case PdmDevicePixelRatioScaled:
                return static_cast<int>(QPaintDevice::devicePixelRatioFScale());
            case PdmDepth:
                return 32;
            default:
                return 1;
        }
    }

  private:
    mutable NotingEngine engine_;
};

}  // namespace

std::vector<RecordedPath> recorded_svg(const QByteArray& svg) {
    std::vector<RecordedPath> notes;
    QSvgRenderer renderer(svg);
    if (!renderer.isValid()) return notes;
    NotingDevice device(notes);
    QPainter painter(&device);
    renderer.render(&painter, renderer.viewBoxF());
    painter.end();
    return notes;
}

}  // namespace howlmap::app
