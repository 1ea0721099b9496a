// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_output.h"

#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMimeData>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_view.h"
#include "app/command_line/shows.h"
#include "core/file/write.h"

namespace howlmap::app {
namespace {
constexpr double kPxPerInch = 96.0;
constexpr double kPictureDpi = 192.0;

/// A printer with the page that suits the plan.
void set_page(PlanView& view, QPrinter& printer) {
    const Show& show = view.document().show();
    printer.setPageLayout(plan_page(show, drawing_of(view)));
    printer.setDocName(QString::fromStdString(show.title));
}

/// A name beside the show: "duo.pdf" for "duo.howlmap".
QString wished_name(PlanView& view) {
    const QString path = view.document().path();
    if (path.isEmpty()) return PlanView::tr("plan.pdf");
    const QFileInfo file(path);
    return file.path() + u'/' + file.completeBaseName() + QStringLiteral(".pdf");
}
}  // namespace

PlanDrawing drawing_of(PlanView& view) {
    PlanDrawing drawing;
    drawing.font = view.font();
    drawing.grid = view.grid_visible();
    drawing.analysis = view.analysis().result();
    drawing.highlight = view.highlight();
    if (const auto shown = view.layers().maps().picture()) {
        const System& system = view.document().show().system;
        drawing.map = std::make_shared<const MapPicture>(
            picture_of(shown->grid, {system.target_margin_db, system.house_target_dba, drawing.ink, shown->title}));
        drawing.map_opacity = view.overlay().opacity;
    }
    return drawing;
}

Outcome save_picture(PlanView& view, const QString& file, const PlanFile& options) {
    PlanFile wish = options;
    const auto format = plan_format_of(file);
    if (!format)
        return tl::make_unexpected(Trouble{PlanView::tr("The plan cannot be written."), file,
                                           PlanView::tr("The name ends in none of .pdf, .svg and .png."),
                                           PlanView::tr("Choose a name with one of these endings.")});
    wish.format = *format;
    const QByteArray bytes = plan_bytes(view.document().show(), drawing_of(view), wish);
    const auto saved =
        save_atomically(to_path(file), std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (saved) return {};
    return tl::make_unexpected(Trouble{PlanView::tr("The plan cannot be written."), file,
                                       QString::fromStdString(saved.error()), PlanView::tr("Choose another folder.")});
}

void print_onto(PlanView& view, QPrinter& printer) {
    QPainter painter(&printer);
    const QRectF page(QPointF(), printer.pageLayout().paintRectPixels(printer.resolution()).size());
    PlanPainter(view.document().show(), drawing_of(view)).paint(painter, page, printer.resolution() / kPxPerInch);
}

void export_picture(PlanView& view) {
    const QString filters = PlanView::tr("PDF (*.pdf);;SVG drawing (*.svg);;PNG picture (*.png)");
    QString chosen;
    QString name =
        QFileDialog::getSaveFileName(&view, PlanView::tr("Write the plan"), wished_name(view), filters, &chosen);
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty())
        name += chosen.contains(u"svg")   ? QStringLiteral(".svg")
                : chosen.contains(u"png") ? QStringLiteral(".png")
                                          : QStringLiteral(".pdf");
    const Outcome done = save_picture(view, name, {});
    if (done) {
        Q_EMIT view.message(PlanView::tr("Plan written to %1").arg(name));
        return;
    }
    Q_EMIT view.trouble(done.error());
}

void print_plan(PlanView& view) {
    QPrinter printer(QPrinter::HighResolution);
    set_page(view, printer);
    QPrintDialog dialog(&printer, &view);
    if (dialog.exec() == QDialog::Accepted) print_onto(view, printer);
}

void preview_plan(PlanView& view) {
    QPrinter printer(QPrinter::HighResolution);
    set_page(view, printer);
    QPrintPreviewDialog dialog(&printer, &view);
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &view,
                     [&view](QPrinter* paper) { print_onto(view, *paper); });
    dialog.exec();
}

void copy_picture(PlanView& view) {
    const PlanDrawing drawing = drawing_of(view);
    const Show& show = view.document().show();
    PlanFile file;
    file.format = PlanFormat::svg;
    auto* mime = new QMimeData;
    mime->setData(QStringLiteral("image/svg+xml"), plan_bytes(show, drawing, file));
    file.format = PlanFormat::png;
    file.dpi = kPictureDpi;
    mime->setImageData(QImage::fromData(plan_bytes(show, drawing, file)));
    QGuiApplication::clipboard()->setMimeData(mime);
    Q_EMIT view.message(PlanView::tr("The plan is on the clipboard."));
}

}  // namespace howlmap::app
