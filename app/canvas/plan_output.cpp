// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_output.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMimeData>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_file_dialog.h"
#include "app/canvas/plan_view.h"
#include "app/command_line/shows.h"
#include "app/document/worker.h"
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

/// A name beside the show without an ending: "duo" for "duo.howlmap".
QString wished_name(PlanView& view) {
    const QString path = view.document().path();
    if (path.isEmpty()) return PlanView::tr("plan");
    const QFileInfo file(path);
    return file.path() + u'/' + file.completeBaseName();
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

namespace {
Outcome not_written(const QString& file, const QString& why, const QString& advice) {
    return tl::make_unexpected(Trouble{PlanView::tr("The plan cannot be written."), file, why, advice});
}

/// In any thread.
Outcome write_picture(const Show& show, const PlanDrawing& drawing, const QString& file, PlanFile wish) {
    const auto format = plan_format_of(file);
    if (!format)
        return not_written(file, PlanView::tr("The name ends in none of .pdf, .svg and .png."),
                           PlanView::tr("Choose a name with one of these endings."));
    wish.format = *format;
    const QByteArray bytes = plan_bytes(show, drawing, wish);
    if (bytes.isEmpty())
        return not_written(file, PlanView::tr("There is not enough memory for a picture of this size."),
                           PlanView::tr("Choose fewer pixels."));
    const auto saved =
        save_atomically(to_path(file), std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (saved) return {};
    return not_written(file, QString::fromStdString(saved.error()), PlanView::tr("Choose another folder."));
}
}  // namespace

Outcome save_picture(PlanView& view, const QString& file, const PlanFile& options) {
    return write_picture(view.document().show(), drawing_of(view), file, options);
}

/// A large picture takes seconds: the window stays at hand meanwhile.
void start_writing(PlanView& view, const QString& file, const PlanFile& options) {
    Q_EMIT view.message(PlanView::tr("Writing the plan to %1…").arg(file));
    auto* writer = new Worker(&view);  // of its own: each is written to the end, also when the window closes
    QObject::connect(writer, &Worker::idle, writer, &QObject::deleteLater);
    writer->run([&view, show = view.document().show(), drawing = drawing_of(view), file,
                 options](const Job&) -> Worker::Deliver {
        const Outcome done = write_picture(show, drawing, file, options);
        return [&view, file, done] {
            if (done)
                Q_EMIT view.message(PlanView::tr("Plan written to %1").arg(file));
            else
                Q_EMIT view.trouble(done.error());
        };
    });
}

void print_onto(PlanView& view, QPrinter& printer) {
    QPainter painter(&printer);
    const QRectF page(QPointF(), printer.pageLayout().paintRectPixels(printer.resolution()).size());
    PlanPainter(view.document().show(), drawing_of(view)).paint(painter, page, printer.resolution() / kPxPerInch);
}

void export_picture(PlanView& view) {
    PlanFileDialog dialog(wished_name(view), &view);
    if (dialog.exec() != QDialog::Accepted) return;
    start_writing(view, dialog.file_name(), dialog.wish());
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
