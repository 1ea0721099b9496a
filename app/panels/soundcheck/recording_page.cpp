// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/recording_page.h"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/document/document.h"
#include "app/document/trouble.h"
#include "app/panels/soundcheck/cut_offer.h"
#include "app/settings/figures.h"
#include "core/audio/ring_recording.h"
#include "core/units/bands.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {

const QStringList kEndings{QStringLiteral("wav"), QStringLiteral("flac"), QStringLiteral("aiff"), QStringLiteral("aif"),
                           QStringLiteral("w64"), QStringLiteral("ogg"),  QStringLiteral("mp3")};

QTableWidget* table(const QStringList& titles, const QString& name, const char* object) {
    auto* made = new QTableWidget(0, static_cast<int>(titles.size()));
    made->setHorizontalHeaderLabels(titles);
    made->setObjectName(QString::fromLatin1(object));
    made->setAccessibleName(name);
    made->setSelectionBehavior(QAbstractItemView::SelectRows);
    made->setSelectionMode(QAbstractItemView::SingleSelection);
    made->setEditTriggers(QAbstractItemView::NoEditTriggers);
    made->verticalHeader()->hide();
    made->verticalHeader()->setDefaultSectionSize(made->fontMetrics().height() + 6);
    made->horizontalHeader()->setStretchLastSection(true);
    made->setWordWrap(false);
    made->setTabKeyNavigation(false);
    return made;
}

void fill(QTableWidget& table, const QList<QStringList>& rows) {
    const QSignalBlocker quiet(&table);
    table.setRowCount(static_cast<int>(rows.size()));
    for (int r = 0; r < rows.size(); ++r)
        for (int c = 0; c < rows[r].size(); ++c) table.setItem(r, c, new QTableWidgetItem(rows[r][c]));
    table.resizeColumnsToContents();
}

QString clock(double seconds) {
    const int tenths = qRound(10.0 * seconds);
    return QStringLiteral("%1:%2.%3").arg(tenths / 600).arg(tenths / 10 % 60, 2, 10, QLatin1Char('0')).arg(tenths % 10);
}

QString note_of_hz(double hz) {
    const Note note = note_of(hz);
    return QStringLiteral("%1 %2%3 c")
        .arg(qstr(note.name), note.cents < 0.0 ? QString() : QStringLiteral("+"))
        .arg(qRound(note.cents));
}

}  // namespace

bool is_sound_file(const QString& path) { return kEndings.contains(QFileInfo(path).suffix().toLower()); }

QString sound_file_filter() {
    return RecordingPage::tr("Sound (%1);;All files (*)")
        .arg(QStringLiteral("*.") + kEndings.join(QStringLiteral(" *.")));
}

RecordingPage::RecordingPage(const Workspace& workspace, QWidget* parent) : QWidget(parent), work_(workspace) {
    setAcceptDrops(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(6, 6, 6, 6);
    column->addWidget(build_top());
    column->addWidget(build_tables(), 1);
    connect(&worker_, &Worker::progress, progress_,
            [this](double fraction) { progress_->setValue(qRound(1000.0 * fraction)); });
    connect(table_, &QTableWidget::itemSelectionChanged, this, &RecordingPage::look_for_suspects);
    connect(suspect_table_, &QTableWidget::itemSelectionChanged, this, &RecordingPage::offer_suspect);
    setFocusProxy(load_);
}

QWidget* RecordingPage::build_top() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    load_ = new QPushButton(tr("Load a &sound…"));
    load_->setObjectName(QStringLiteral("load_sound"));
    load_->setToolTip(tr("A recording in which something howls: WAV, FLAC or AIFF, also hours long."));
    cancel_ = new QPushButton(tr("Stop"));
    cancel_->setToolTip(tr("Gives the search up."));
    cancel_->hide();
    progress_ = new QProgressBar;
    progress_->setRange(0, 1000);
    progress_->setMaximumWidth(160);
    progress_->setAccessibleName(tr("Searched so far"));
    progress_->hide();
    words_ =
        new QLabel(tr("Load a recording, or drop one here: it says which frequency howls, and which loop it may be."));
    words_->setObjectName(QStringLiteral("recording_words"));
    words_->setWordWrap(true);
    line->addWidget(load_);
    line->addWidget(progress_);
    line->addWidget(cancel_);
    line->addWidget(words_, 1);
    connect(load_, &QPushButton::clicked, this, &RecordingPage::choose);
    connect(cancel_, &QPushButton::clicked, this, &RecordingPage::cancel);
    return row;
}

QWidget* RecordingPage::build_tables() {
    table_ = table({tr("Frequency"), tr("Band"), tr("Note"), tr("When"), tr("Grew"), tr("Loudest")},
                   tr("Howls in the recording"), "howls");
    suspect_table_ = table({tr("Could be"), tr("Rings at"), tr("Margin")}, tr("Loops that could make it"), "suspects");
    offer_ = new CutOffer(work_, this);
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->addWidget(table_);
    splitter->addWidget(suspect_table_);
    splitter->addWidget(offer_);
    splitter->setStretchFactor(0, 4);
    splitter->setStretchFactor(1, 3);
    splitter->setStretchFactor(2, 3);
    splitter->setSizes({260, 200, 200});
    return splitter;
}

void RecordingPage::choose() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Load a sound"), {}, sound_file_filter());
    if (!path.isEmpty()) load(path);
}

void RecordingPage::load(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    words_->setText(tr("Listening to %1 …").arg(name));
    progress_->setValue(0);
    progress_->show();
    cancel_->show();
    worker_.restart([this, path, name](const Job& job) -> Worker::Deliver {
        auto reader = RecordingReader::open(path.toStdString());
        auto found = reader ? find_howls(std::move(*reader), job) : tl::unexpected(reader.error());
        if (job.cancelled()) return {};
        return [this, found = std::move(found), path, name] {
            progress_->hide();
            cancel_->hide();
            if (found) {
                words_->setToolTip(path);
                show_howls(found->howls, found->duration_s);
                words_->setText(
                    howls_.empty()
                        ? tr("%1: no howl in %2.").arg(name, clock(found->duration_s))
                        : tr("%1, %2: howls found: %3.").arg(name, clock(found->duration_s)).arg(howls_.size()));
            } else {
                words_->setText(tr("%1 was not read.").arg(name));
                work_.report({tr("The sound cannot be used."), path, qstr(found.error()),
                              tr("Save it as WAV, FLAC or AIFF with 8 to 192 kHz and load it again.")});
            }
            Q_EMIT loaded();
        };
    });
}

void RecordingPage::cancel() {
    worker_.cancel();
    progress_->hide();
    cancel_->hide();
    words_->setText(tr("Stopped."));
}

void RecordingPage::show_howls(std::vector<Howl> howls, double) {
    howls_ = std::move(howls);
    QList<QStringList> rows;
    for (const Howl& h : howls_) {
        const QString grew = h.growth_db_per_s > 0.0 ? tr("%1 dB/s").arg(h.growth_db_per_s, 0, 'f', 0) : tr("held");
        const double band = kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(h.hz))];
        rows.append({hz_text(h.hz), band_text(band), note_of_hz(h.hz),
                     tr("%1 to %2").arg(clock(h.from_s), clock(h.to_s)), grew,
                     tr("%1 dBFS").arg(h.level_dbfs, 0, 'f', 0)});
    }
    fill(*table_, rows);
    fill(*suspect_table_, {});
    offer_->withdraw();
    if (!howls_.empty()) table_->selectRow(0);
}

double RecordingPage::marked_hz() const {
    const int row = table_->currentRow();
    return row >= 0 && static_cast<std::size_t>(row) < howls_.size() ? howls_[static_cast<std::size_t>(row)].hz : 0.0;
}

void RecordingPage::look_for_suspects() {
    const double hz = marked_hz();
    if (hz <= 0.0) return;
    suspects_worker_.restart([this, hz, show = work_.document.show()](const Job& job) -> Worker::Deliver {
        auto found = loops_for_frequency(show, hz, job);
        if (job.cancelled()) return {};
        return [this, found = std::move(found)] { show_suspects(found); };
    });
}

void RecordingPage::show_suspects(std::vector<LoopSuspect> suspects) {
    suspects_ = std::move(suspects);
    QList<QStringList> rows;
    for (const LoopSuspect& s : suspects_)
        rows.append({tr("%1 → %2").arg(name_text(work_.document.show(), s.loudspeaker),
                                       name_text(work_.document.show(), s.input)),
                     hz_text(s.hz), margin_text(s.margin_db)});
    if (rows.isEmpty()) rows.append({tr("no loop of this show comes near"), {}, {}});
    fill(*suspect_table_, rows);
    suspect_table_->clearSelection();
    if (suspects_.empty())
        offer_->offer(marked_hz(), {}, {}, {});
    else
        suspect_table_->selectRow(0);
    Q_EMIT suspects_found();
}

void RecordingPage::offer_suspect() {
    const int row = suspect_table_->currentRow();
    if (row < 0 || static_cast<std::size_t>(row) >= suspects_.size() || marked_hz() <= 0.0) return;
    const LoopSuspect& s = suspects_[static_cast<std::size_t>(row)];
    offer_->offer(marked_hz(), s.input, s.loudspeaker, {});
}

void RecordingPage::dragEnterEvent(QDragEnterEvent* event) {
    const auto urls = event->mimeData()->urls();
    if (urls.size() == 1 && urls[0].isLocalFile() && is_sound_file(urls[0].toLocalFile()))
        event->acceptProposedAction();
}

void RecordingPage::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    load(event->mimeData()->urls().value(0).toLocalFile());
}

}  // namespace howlmap::app
