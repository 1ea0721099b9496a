// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_output.h"

#include <QClipboard>
#include <QCloseEvent>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMimeData>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QProgressDialog>
#include <stop_token>

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
constexpr int kMomentMs = 1000;

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
tl::unexpected<Trouble> not_written(const QString& file, const QString& why, const QString& advice) {
    return tl::make_unexpected(Trouble{PlanView::tr("The plan cannot be written."), file, why, advice});
}

/// In any thread. False when it was cancelled before anything was written.
tl::expected<bool, Trouble> write_picture(const Show& show, const PlanDrawing& drawing, const QString& file,
                                          PlanFile wish, const Job& job) {
    const auto format = plan_format_of(file);
    if (!format)
        return not_written(file, PlanView::tr("The name ends in none of .pdf, .svg and .png."),
                           PlanView::tr("Choose a name with one of these endings."));
    wish.format = *format;
    const QByteArray bytes = plan_bytes(show, drawing, wish, job);
    if (job.cancelled()) return false;
    if (bytes.isEmpty())
        return not_written(file, PlanView::tr("There is not enough memory for a picture of this size."),
                           PlanView::tr("Choose fewer pixels."));
    const auto saved =
        save_atomically(to_path(file), std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!saved) return not_written(file, QString::fromStdString(saved.error()), PlanView::tr("Choose another folder."));
    return true;
}

/// Cancelled by its button, by Esc and by the hand that closes it, but not when the program closes all its windows.
class WritingDialog : public QProgressDialog {
  public:
    using QProgressDialog::QProgressDialog;

  protected:
    void closeEvent(QCloseEvent* event) override {
        event->spontaneous() ? QProgressDialog::closeEvent(event) : QDialog::closeEvent(event);
    }
};

/// Comes up when writing takes longer than a moment, and goes with `writer`. Nothing counts how far packing is.
void offer_to_cancel(PlanView& view, Worker* writer, const QString& file, const std::stop_source& stop) {
    auto* dialog = new WritingDialog(PlanView::tr("Writing the plan to %1…").arg(QFileInfo(file).fileName()),
                                     PlanView::tr("Cancel"), 0, 0, &view);
    dialog->setObjectName(QStringLiteral("plan_writing"));
    dialog->setWindowTitle(PlanView::tr("Write the plan"));
    dialog->setMinimumDuration(kMomentMs);
    dialog->setValue(0);  // the moment begins
    QObject::connect(dialog, &QProgressDialog::canceled, writer, [stop]() mutable { stop.request_stop(); });
    QObject::connect(writer, &QObject::destroyed, dialog, &QObject::deleteLater);
}
}  // namespace

Outcome save_picture(PlanView& view, const QString& file, const PlanFile& options) {
    const auto written = write_picture(view.document().show(), drawing_of(view), file, options, {});
    if (!written) return tl::make_unexpected(written.error());
    return {};
}

/// A large picture takes seconds: the window stays at hand meanwhile.
void start_writing(PlanView& view, const QString& file, const PlanFile& options) {
    Q_EMIT view.message(PlanView::tr("Writing the plan to %1…").arg(file));
    auto* writer = new Worker(&view);  // of its own: each is written to the end, also when the window closes
    QObject::connect(writer, &Worker::idle, writer, &QObject::deleteLater);
    const std::stop_source stop;  // not the writer's, which closing the window asks for
    offer_to_cancel(view, writer, file, stop);
    writer->run([&view, show = view.document().show(), drawing = drawing_of(view), file, options,
                 stop](const Job&) -> Worker::Deliver {
        const auto written = write_picture(show, drawing, file, options, {stop.get_token(), {}});
        return [&view, file, written] {
            if (!written) return Q_EMIT view.trouble(written.error());
            Q_EMIT view.message(
                (*written ? PlanView::tr("Plan written to %1") : PlanView::tr("%1 was not written")).arg(file));
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
