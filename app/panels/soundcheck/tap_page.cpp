// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/tap_page.h"

#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/panels/soundcheck/body_curve.h"
#include "app/panels/soundcheck/recording_page.h"
#include "app/settings/figures.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {
constexpr double kLongestFile_s = 300.0, kLongestTake_s = 60.0;
}

TapPage::TapPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), table_(new QTableWidget(0, 4)), curve_(new BodyCurve) {
    setAcceptDrops(true);
    table_->setObjectName(QStringLiteral("tap_modes"));
    table_->setAccessibleName(tr("Modes, strongest first"));
    table_->setHorizontalHeaderLabels({tr("Frequency"), tr("Note"), tr("Q"), tr("Level")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 6);
    table_->horizontalHeader()->setStretchLastSection(true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(6, 6, 6, 6);
    row->addWidget(build_side(), 2);
    row->addWidget(table_, 2);
    row->addWidget(curve_, 3);
    connect(&document_, &Document::changed, this, &TapPage::refresh_inputs);
    connect(&document_, &Document::replaced, this, &TapPage::refresh_inputs);
    refresh_inputs();
}

QWidget* TapPage::build_side() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    const auto button = [&](const QString& text, const QString& tip, const char* name, auto slot) {
        auto* made = new QPushButton(text);
        made->setObjectName(QString::fromLatin1(name));
        made->setToolTip(tip);
        connect(made, &QPushButton::clicked, this, slot);
        return made;
    };
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(button(tr("Load &taps…"), tr("A recording of several taps with quiet between them."),
                              "load_taps", &TapPage::choose));
    record_ = button(tr("Re&cord"), tr("Records taps from the first sound input, a minute at most."), "record_taps",
                     &TapPage::record_or_stop);
    buttons->addWidget(record_);
    input_ = new QComboBox;
    input_->setObjectName(QStringLiteral("tap_input"));
    input_->setAccessibleName(tr("Pickup"));
    input_->setToolTip(tr("The pickup that is to have the modes."));
    connect(input_, &QComboBox::activated, this, &TapPage::refresh_curve);
    apply_ = button(tr("&Put on pickup"), tr("Gives the pickup these modes; one step that can be undone."),
                    "put_on_pickup", &TapPage::put_on_pickup);
    words_ = new QLabel(tr("Damp the strings, tap the bridge a few times with a fingertip, and load the recording."));
    words_->setObjectName(QStringLiteral("tap_words"));
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop);
    column->addLayout(buttons);
    column->addWidget(input_);
    column->addWidget(apply_);
    column->addWidget(words_, 1);
    return side;
}

void TapPage::refresh_inputs() {
    const QString before = input();
    input_->clear();
    for (const Input& i : document_.show().inputs)
        if (pickup_of(i)) input_->addItem(qstr(report::name_of(i)), qstr(i.id));
    set_input(before);
}

void TapPage::set_input(const QString& id) {
    if (const int row = input_->findData(id); row >= 0) input_->setCurrentIndex(row);
    refresh_curve();
}

QString TapPage::input() const { return input_->currentData().toString(); }

void TapPage::refresh_curve() {
    const Input* chosen = find_by_id(document_.show().inputs, input().toStdString());
    const Pickup* pickup = chosen ? pickup_of(*chosen) : nullptr;
    std::optional<Pickup> before, after;
    if (pickup) before = *pickup;
    if (pickup && findings_) {
        after = *pickup;
        after->modes = body_modes(*findings_, pickup->modes);
    }
    apply_->setEnabled(after.has_value() && after != before);
    apply_->setToolTip(pickup ? tr("Gives the pickup these modes; one step that can be undone.")
                              : tr("This show has no pickup yet."));
    curve_->set(std::move(before), std::move(after));
}

void TapPage::choose() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Load taps"), {}, sound_file_filter());
    if (!path.isEmpty()) load(path);
}

void TapPage::load(const QString& path) {
    analyse([path] { return read_mono(path.toStdString(), kLongestFile_s); }, QFileInfo(path).fileName());
}

void TapPage::record_or_stop() {
    if (source_) return stop_recording();
    QString why;
    auto source = open_sound_input(0, &why);
    if (source)
        record(std::move(source));
    else
        words_->setText(why);
}

void TapPage::record(std::unique_ptr<SoundSource> source) {
    source_ = std::move(source);
    recorded_ = {static_cast<int>(source_->rate()), {}};
    record_->setText(tr("&Stop"));
    words_->setText(tr("Recording: tap a few times, half a second apart, then stop."));
    connect(source_.get(), &SoundSource::samples, this, [this](const std::vector<float>& mono) {
        recorded_.samples.insert(recorded_.samples.end(), mono.begin(), mono.end());
        if (static_cast<double>(recorded_.samples.size()) > kLongestTake_s * recorded_.rate)
            QMetaObject::invokeMethod(this, &TapPage::stop_recording, Qt::QueuedConnection);
    });
    connect(source_.get(), &SoundSource::ended, this, &TapPage::stop_recording, Qt::QueuedConnection);
    connect(
        source_.get(), &SoundSource::failed, this,
        [this](const QString& why) {
            stop_recording();
            words_->setText(why);
        },
        Qt::QueuedConnection);
    source_->start();
}

void TapPage::stop_recording() {
    if (!source_) return;
    source_->stop();
    source_.reset();
    record_->setText(tr("Re&cord"));
    analyse([taken = std::move(recorded_)]() -> tl::expected<ShortRecording, std::string> { return taken; },
            tr("The recording"));
    recorded_ = {};
}

void TapPage::analyse(std::function<tl::expected<ShortRecording, std::string>()> read, const QString& name) {
    words_->setText(tr("%1: looking for modes …").arg(name));
    worker_.restart([this, read = std::move(read), name](const Job& job) -> Worker::Deliver {
        const auto recording = read();
        auto found =
            recording ? tap_modes(recording->samples, recording->rate, job) : tl::unexpected(recording.error());
        if (job.cancelled()) return {};
        return [this, name, found = std::move(found)] {
            findings_ = found ? std::optional(*found) : std::nullopt;
            show_findings(name);
            if (!found) words_->setText(QStringLiteral("%1: %2").arg(name, qstr(found.error())));
            Q_EMIT analysed();
        };
    });
}

void TapPage::show_findings(const QString& name) {
    const auto modes = findings_ ? findings_->modes : std::vector<TapMode>{};
    table_->setRowCount(static_cast<int>(modes.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const TapMode& mode = modes[static_cast<std::size_t>(row)];
        const QStringList cells{tr("%1 Hz").arg(decimal_text(mode.hz, 1)), qstr(note_of(mode.hz).name),
                                decimal_text(mode.q, 1), tr("%1 dB").arg(decimal_text(mode.level_db + 0.0, 1))};
        for (int c = 0; c < cells.size(); ++c) table_->setItem(row, c, new QTableWidgetItem(cells[c]));
    }
    table_->resizeColumnsToContents();
    if (findings_) words_->setText(tr("%1: taps averaged: %2.").arg(name).arg(findings_->taps));
    refresh_curve();
}

void TapPage::put_on_pickup() {
    if (!findings_) return;
    const std::string id = input().toStdString();
    document_.edit(tr("Modes of %1 from taps").arg(input_->currentText()), [&](Show& show) {
        Input* chosen = find_by_id(show.inputs, id);
        auto* pickup = chosen ? std::get_if<Pickup>(&chosen->transducer) : nullptr;
        if (pickup) pickup->modes = body_modes(*findings_, pickup->modes);
    });
}

void TapPage::dragEnterEvent(QDragEnterEvent* event) {
    const auto urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls[0].isLocalFile() && is_sound_file(urls[0].toLocalFile()))
        event->acceptProposedAction();
}

void TapPage::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    load(event->mimeData()->urls().value(0).toLocalFile());
}

void open_tap_dialog(Document& document, const QString& input, QWidget* parent) {
    auto* dialog = new QDialog(parent);
    dialog->setObjectName(QStringLiteral("tap_dialog"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(TapPage::tr("Modes from a tap recording"));
    dialog->resize(760, 320);
    auto* page = new TapPage(document, dialog);
    page->set_input(input);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
    auto* column = new QVBoxLayout(dialog);
    column->addWidget(page, 1);
    column->addWidget(buttons);
    dialog->show();
}

}  // namespace howlmap::app
