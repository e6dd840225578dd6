<#-- Where ink is saved: grounds are white, and what was white on them is black. It stands last on every page, and moves nothing; the press thins rules and letters. -->
.caution { background: white !important; }
.caution .label { color: black !important; }
.cautionsign { background: white !important; border: 0.9pt solid black; padding: 2.5016pt 5.3362pt !important; }
.hopline .here { color: black !important; }
.band { background: white !important; border-right: 0.9pt solid black; }
.bandword { color: black !important; }
