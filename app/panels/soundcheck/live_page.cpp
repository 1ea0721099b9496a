// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/live_page.h"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "app/panels/soundcheck/live_display.h"
#include "app/panels/soundcheck/recording_page.h"
#include "app/settings/figures.h"

namespace howlmap::app {
namespace {
constexpr int kFile = -1, kNone = -2;
}

LivePage::LivePage(const Workspace& workspace, QWidget* parent) : QWidget(parent), work_(workspace) {
    build();
    find_inputs();
}

LivePage::~LivePage() { delete large_; }

void LivePage::build() {
    display_ = new LiveDisplay(this);
    input_ = new QComboBox;
    input_->setAccessibleName(tr("Sound input"));
    input_->setToolTip(tr("Where the sound comes from."));
    input_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    input_->setMinimumContentsLength(18);
    const auto button = [this](const QString& text, const QString& tip, const char* name, auto slot) {
        auto* made = new QPushButton(text);
        made->setObjectName(QString::fromLatin1(name));
        made->setToolTip(tip);
        connect(made, &QPushButton::clicked, this, slot);
        return made;
    };
    listen_ = button(tr("&Listen"), tr("Begins or stops listening; nothing is kept."), "live_listen",
                     &LivePage::start_or_stop);
    full_ = button(tr("&Fill the screen"), tr("Shows it so large that it can be read from the stage; Esc closes."),
                   "live_large", &LivePage::show_large);
    name_ = button(tr("&Cut this ring"), tr("Takes the last ring into the walk."), "live_name",
                   [this] { Q_EMIT ring_named(last_hz_); });
    name_->setEnabled(false);
    words_ = new QLabel;
    words_->setObjectName(QStringLiteral("live_words"));
    words_->setWordWrap(true);
    auto* side = new QVBoxLayout;
    for (QWidget* widget : {static_cast<QWidget*>(input_), static_cast<QWidget*>(listen_), static_cast<QWidget*>(full_),
                            static_cast<QWidget*>(name_)})
        side->addWidget(widget);
    side->addWidget(words_, 1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(6, 6, 6, 6);
    row->addLayout(side, 1);
    row->addWidget(display_, 3);
    setFocusProxy(listen_);
}

void LivePage::find_inputs() {
    input_->clear();
    const QStringList names = sound_inputs();
    for (int i = 0; i < names.size(); ++i) input_->addItem(names[i], i);
    input_->addItem(tr("A file in its place…"), kFile);
    if (names.isEmpty()) input_->addItem(tr("Look for sound inputs again"), kNone);
    say(names.isEmpty() ? no_sound_input_words() : tr("Levels are of the input (dBFS), not of the room."));
}

void LivePage::say(const QString& sentence) { words_->setText(sentence); }

void LivePage::start_or_stop() {
    if (source_) return stop();
    const int choice = input_->currentData().toInt();
    if (choice == kNone) return find_inputs();
    if (choice >= 0) {
        QString why;
        auto source = open_sound_input(choice, &why);
        return source ? listen(std::move(source)) : say(why);
    }
    const QString path =
        QFileDialog::getOpenFileName(this, tr("A file in place of a sound input"), {}, sound_file_filter());
    if (path.isEmpty()) return;
    auto reader = RecordingReader::open(path.toStdString());
    if (!reader) return say(qstr(reader.error()));
    listen(std::make_unique<FileSource>(std::move(*reader), 1.0));
}

void LivePage::listen(std::unique_ptr<SoundSource> source) {
    stop();
    source_ = std::move(source);
    meter_ = std::make_unique<SoundMeter>(source_->rate());
    ringing_ = false;
    connect(source_.get(), &SoundSource::samples, this, &LivePage::take);
    // A source must not be deleted while it speaks.
    connect(source_.get(), &SoundSource::ended, this, &LivePage::stop, Qt::QueuedConnection);
    connect(
        source_.get(), &SoundSource::failed, this,
        [this](const QString& why) {
            stop();
            say(why);
        },
        Qt::QueuedConnection);
    listen_->setText(tr("&Stop"));
    say(tr("Listening; nothing is kept. Levels are of the input (dBFS), not of the room."));
    source_->start();
}

void LivePage::stop() {
    if (!source_) return;
    source_->stop();
    source_.reset();
    meter_.reset();
    listen_->setText(tr("&Listen"));
    display_->show_reading({});
    if (large_) large_->show_reading({});
    say(last_hz_ > 0.0 ? tr("Stopped. The last ring was at %1.").arg(hz_text(last_hz_)) : tr("Stopped."));
}

void LivePage::take(const std::vector<float>& samples) {
    meter_->push(samples);
    const SoundReading& reading = meter_->reading();
    display_->show_reading(reading);
    if (large_) large_->show_reading(reading);
    if (!reading.howls.empty()) {
        const double hz = reading.howls.front().hz;
        const bool another = !ringing_ || std::abs(std::log2(hz / last_hz_)) > 1.0 / 12.0;
        last_hz_ = hz;
        name_->setEnabled(true);
        if (another) Q_EMIT rings(hz);
    }
    ringing_ = !reading.howls.empty();
}

void LivePage::show_large() {
    if (!large_) {
        large_ = new LiveDisplay;
        large_->setWindowTitle(tr("Live sound"));
        large_->installEventFilter(this);
    }
    if (source_) large_->show_reading(meter_->reading());
    large_->showFullScreen();
}

bool LivePage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == large_ && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        large_->close();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace howlmap::app
