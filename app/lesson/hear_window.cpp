// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/hear_window.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/lesson/player.h"
#include "app/settings/figures.h"
#include "app/settings/icons.h"
#include "core/audio/hear.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

enum Source { kOwn, kPlucked, kBowed, kRecording };
constexpr double kPhrase_s = 12.0, kRate = 48000.0;

}  // namespace

HearWindow::HearWindow(Document& document, AnalysisService& analysis, QWidget* parent)
    : QWidget(parent, Qt::Window),
      document_(document),
      analysis_(analysis),
      source_(new QComboBox),
      input_(new QComboBox),
      margin_(new QLabel),
      words_(new QLabel),
      write_(new QPushButton(icon(QStringLiteral("save")), tr("&Write a sound file..."))),
      cancel_(new QPushButton(icon(QStringLiteral("close")), tr("Cancel"))),
      progress_(new QProgressBar),
      sound_(new SoundBar([this] { return wish(); }, this)) {
    setObjectName(QStringLiteral("hear_window"));
    setWindowTitle(tr("Hear the stage - Howlmap"));
    resize(640, 280);
    source_->setObjectName(QStringLiteral("source"));
    source_->setAccessibleName(tr("What is played"));
    source_->addItems({tr("What suits the input"), tr("Plucked strings"), tr("Bowed strings"), tr("A recording...")});
    input_->setObjectName(QStringLiteral("input"));
    input_->setAccessibleName(tr("Into which input"));
    margin_->setObjectName(QStringLiteral("margin"));
    words_->setObjectName(QStringLiteral("words"));
    words_->setWordWrap(true);
    write_->setObjectName(QStringLiteral("write"));
    cancel_->setToolTip(tr("Stops writing; no file is left behind."));
    write_->setToolTip(tr("Writes what would be heard as a WAV file, faded in and held below half of full scale."));
    auto* form = new QFormLayout;
    form->addRow(tr("&Play"), source_);
    form->addRow(tr("&Into"), input_);
    form->addRow(tr("As drawn"), margin_);
    auto* row = new QHBoxLayout;
    row->addWidget(write_);
    row->addWidget(progress_, 1);
    row->addWidget(cancel_);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(sound_);
    column->addLayout(row);
    column->addWidget(words_);
    column->addStretch(1);
    connect(source_, &QComboBox::activated, this, &HearWindow::choose_source);
    connect(write_, &QPushButton::clicked, this, &HearWindow::ask_and_write);
    connect(cancel_, &QPushButton::clicked, this, [this] {
        worker_.cancel();
        set_writing(false);
        words_->setText(tr("Nothing was written."));
    });
    connect(&worker_, &Worker::progress, this, [this](double f) { progress_->setValue(static_cast<int>(100 * f)); });
    connect(&document_, &Document::changed, this, &HearWindow::refresh);
    connect(&document_, &Document::replaced, this, [this] {
        sound_->stop();
        refresh();
    });
    connect(&analysis_, &AnalysisService::updated, this, &HearWindow::refresh);
    set_writing(false);
    refresh();
}

void HearWindow::refresh() {
    fill_inputs();
    const auto result = analysis_.result();
    margin_->setText(result ? margin_text(result->margin_db) : tr("on its way"));
}

void HearWindow::fill_inputs() {
    const QString chosen = input_->currentData().toString();
    const QSignalBlocker quiet(input_);
    input_->clear();
    input_->addItem(tr("The one that feeds the first ring"), QString());
    for (const Input& input : document_.show().inputs)
        if (!is_line(input)) input_->addItem(name_text(document_.show(), input.id), QString::fromStdString(input.id));
    input_->setCurrentIndex(std::max(0, input_->findData(chosen)));
}

void HearWindow::choose_source(int index) {
    if (index != kRecording) return;
    const QString path = QFileDialog::getOpenFileName(this, tr("A recording to play"), {},
                                                      tr("Sound files (*.wav *.flac *.aiff *.ogg)"));
    path.isEmpty() ? source_->setCurrentIndex(kOwn) : use_recording(path);
}

void HearWindow::use_recording(const QString& path) {
    words_->setText(tr("Reading %1...").arg(QFileInfo(path).fileName()));
    reader_.restart([this, path](const Job&) -> Worker::Deliver {
        auto read = std::make_shared<tl::expected<std::vector<float>, std::string>>(
            read_source(QFileInfo(path).filesystemFilePath()));
        return [this, read, path] {
            allow_writing();
            const bool good = read->has_value();
            recording_ = good ? std::move(**read) : std::vector<float>{};
            source_->setCurrentIndex(good ? kRecording : kOwn);
            words_->setText(good ? tr("%1 is played.").arg(QFileInfo(path).fileName())
                                 : QString::fromStdString(read->error()));
        };
    });
    allow_writing();
}

SoundBar::Wish HearWindow::wish() const {
    SoundBar::Wish out{document_.show(), {}};
    out.options.input = input_->currentData().toString().toStdString();
    out.options.raise_db = sound_->raise_db();
    const int source = source_->currentIndex();
    if (source == kPlucked) out.options.source = built_in_phrase(SpectrumName::plucked, kPhrase_s, kRate);
    if (source == kBowed) out.options.source = built_in_phrase(SpectrumName::strings, kPhrase_s, kRate);
    if (source == kRecording) out.options.source = recording_;
    return out;
}

void HearWindow::ask_and_write() {
    QString path = QFileDialog::getSaveFileName(this, tr("Write a sound file"), {}, tr("WAV sound (*.wav)"));
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".wav");
    write(path);
}

void HearWindow::write(const QString& path) {
    set_writing(true);
    words_->clear();
    worker_.restart([this, wish = wish(), path](const Job& job) -> Worker::Deliver {
        auto result = hear(wish.show, wish.options, QFileInfo(path).filesystemFilePath(), job);
        if (!result && result.error().kind == HearError::Kind::cancelled) return {};
        const QString words = !result ? QString::fromStdString(result.error().message)
                              : result->dominant_hz && result->growth_db_per_s
                                  ? tr("Written. Strongest at %1, %2 dB a second.")
                                        .arg(hz_text(*result->dominant_hz))
                                        .arg(decimal_text(*result->growth_db_per_s, 1))
                                  : tr("Written.");
        return [this, words] {
            set_writing(false);
            words_->setText(words);
        };
    });
}

void HearWindow::set_writing(bool writing) {
    writing_ = writing;
    allow_writing();
    progress_->setVisible(writing);
    progress_->setValue(0);
    cancel_->setVisible(writing);
}

/// One at a time, and not before the recording that is to be played has been read.
void HearWindow::allow_writing() { write_->setEnabled(!writing_ && !reader_.busy()); }

}  // namespace howlmap::app
