// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/plan_export.h"

#include <QBuffer>
#include <QImage>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

namespace howlmap::app {
namespace {
constexpr double kPxPerInch = 96.0;
constexpr int kPdfDpi = 1200;
constexpr double kMarginMm = 10.0;

QPageLayout page_layout(const Show& show, const PlanPainter& painter) {
    const QPageSize size(show.display.units == Units::metric ? QPageSize::A4 : QPageSize::Letter);
    return QPageLayout(size, painter.upright() ? QPageLayout::Portrait : QPageLayout::Landscape,
                       QMarginsF(kMarginMm, kMarginMm, kMarginMm, kMarginMm), QPageLayout::Millimeter);
}

QString title_of(const Show& show) { return QString::fromStdString(show.title); }

QByteArray pdf_bytes(const Show& show, const PlanPainter& plan) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return {};
    QPdfWriter writer(&buffer);
    writer.setResolution(kPdfDpi);
    writer.setPageLayout(page_layout(show, plan));
    writer.setTitle(title_of(show));
    writer.setCreator(QStringLiteral("Howlmap"));
    QPainter painter(&writer);
    plan.paint(painter, QRectF(0, 0, writer.width(), writer.height()), kPdfDpi / kPxPerInch);
    painter.end();
    return bytes;
}

/// Whole page in pixels of 1/96 inch.
QSizeF page_px(const Show& show, const PlanPainter& plan) {
    return page_layout(show, plan).fullRect(QPageLayout::Inch).size() * kPxPerInch;
}

QRectF within_margin(QSizeF page) {
    const double margin = std::min(kMarginMm / 25.4 * kPxPerInch, 0.04 * std::min(page.width(), page.height()));
    return QRectF(QPointF(), page).adjusted(margin, margin, -margin, -margin);
}

QByteArray svg_bytes(const Show& show, const PlanPainter& plan, const PlanDrawing& drawing) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    const QSizeF page = page_px(show, plan);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(static_cast<int>(kPxPerInch));
    generator.setSize(page.toSize());
    generator.setViewBox(QRectF(QPointF(), page));
    generator.setTitle(title_of(show));
    generator.setDescription(QStringLiteral("Howlmap"));
    QPainter painter(&generator);
    if (drawing.background) painter.fillRect(QRectF(QPointF(), page), drawing.ink.paper);
    plan.paint(painter, within_margin(page));
    painter.end();
    return bytes;
}

/// Takes bytes until the job is cancelled: packing a large picture takes longest, and nobody else can interrupt it.
class JobBuffer : public QBuffer {
  public:
    JobBuffer(QByteArray* bytes, const Job& job) : QBuffer(bytes), job_(job) {}

  protected:
    qint64 writeData(const char* data, qint64 size) override {
        return job_.cancelled() ? -1 : QBuffer::writeData(data, size);
    }

  private:
    const Job& job_;
};

QByteArray png_bytes(const Show& show, const PlanPainter& plan, const PlanDrawing& drawing, const PlanFile& file,
                     const Job& job) {
    const double px = file.dpi / kPxPerInch;
    const QSize size = file.size.value_or((page_px(show, plan) * px).toSize());
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    if (image.isNull()) return {};
    image.setDotsPerMeterX(static_cast<int>(std::lround(file.dpi / 0.0254)));
    image.setDotsPerMeterY(image.dotsPerMeterX());
    image.fill(drawing.background ? drawing.ink.paper : QColor(Qt::transparent));
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    // The image's resolution is for paper only: the painter counts in its pixels.
    const QRectF inside = within_margin(QSizeF(size) / px);
    plan.paint(painter, QRectF(inside.topLeft() * px, inside.size() * px), px);
    painter.end();
    QByteArray bytes;
    JobBuffer buffer(&bytes, job);
    return image.save(&buffer, "PNG") ? bytes : QByteArray();
}
}  // namespace

std::optional<PlanFormat> plan_format_of(const QString& file_name) {
    const QString name = file_name.toLower();
    if (name.endsWith(QLatin1String(".png"))) return PlanFormat::png;
    if (name.endsWith(QLatin1String(".svg"))) return PlanFormat::svg;
    if (name.endsWith(QLatin1String(".pdf"))) return PlanFormat::pdf;
    return std::nullopt;
}

QPageLayout plan_page(const Show& show, const PlanDrawing& drawing) {
    return page_layout(show, PlanPainter(show, drawing));
}

QByteArray plan_bytes(const Show& show, const PlanDrawing& wished, const PlanFile& file, const Job& job) {
    PlanDrawing drawing = wished;
    drawing.background = !file.transparent;
    const PlanPainter plan(show, drawing);
    switch (file.format) {
        case PlanFormat::png:
            return png_bytes(show, plan, drawing, file, job);
        case PlanFormat::svg:
            return svg_bytes(show, plan, drawing);
        case PlanFormat::pdf:
            return pdf_bytes(show, plan);
    }
    return {};
}

}  // namespace howlmap::app
